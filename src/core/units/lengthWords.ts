import { formatInches } from './formatInches.js';
import { formatMm } from './formatMm.js';
import { mmPerInch } from './mmPerInch.js';

/**
 * A length for a sentence: `5 1/8 in (130.2 mm)`, to the nearest 1/64 in and 0.1 mm; what rounds
 * to nothing and is not nothing is `under 1/64 in (0.2 mm)`, below 0.1 mm in thousandths.
 */
export function lengthWords(mm: number): string {
  if (mm > 0 && mm < mmPerInch / 128) return `under 1/64 in (${formatMm(mm, mm < 0.1 ? 3 : 1)})`;
  return `${formatInches(mm, 64)} (${formatMm(mm, 1)})`;
}
