import type { LengthUnits } from './lengthUnits.js';
import { roomMm, vanishingText } from './vanishingText.js';

/** `vanishingText` within a sentence: `from as far as 2 m`, `from beyond 6 m`. */
export function seenFromText(mm: number, units: LengthUnits): string {
  return `from ${mm > roomMm[units.units] ? '' : 'as far as '}${vanishingText(mm, units)}`;
}
