import { mmPerInch } from './mmPerInch.js';

/**
 * Writes a length in decimal inches, for a digital scale on the fence: `14.375 in`.
 * @param mm length, mm
 * @param places decimals, default 3
 */
export function formatDecimalInches(mm: number, places = 3): string {
  return `${(mm / mmPerInch).toFixed(places)} in`;
}
