import { formatInches } from '../../core/units/formatInches.js';
import { formatMm } from '../../core/units/formatMm.js';
import { mmPerInch } from '../../core/units/mmPerInch.js';
import type { LengthUnits } from './lengthUnits.js';

/**
 * A small step, loss or slide, without its sign: `3/32 in`, `2.4 mm`, `under 1/64 in`.
 * Read to 1/64 in below 1/16 in, to 1/32 in below 1/2 in, then as a place.
 * @param mm length, mm
 */
export function smallLengthText(mm: number, { units, denominator = 16 }: LengthUnits): string {
  const size = Math.abs(mm);
  if (units === 'mm') return size < 0.05 ? 'under 0.1 mm' : formatMm(size, size < 10 ? 1 : 0);
  if (size < mmPerInch / 128) return 'under 1/64 in';
  if (size < mmPerInch / 16) return formatInches(size, 64);
  return formatInches(size, size < mmPerInch / 2 ? Math.max(32, denominator) : denominator);
}
