import { formatInches } from '../../units/formatInches.js';
import { formatMm } from '../../units/formatMm.js';

/** A length for a sentence: `5 1/8 in (130.2 mm)`, to the nearest 1/64 in and 0.1 mm. */
export function lengthWords(mm: number): string {
  return `${formatInches(mm, 64)} (${formatMm(mm, 1)})`;
}
