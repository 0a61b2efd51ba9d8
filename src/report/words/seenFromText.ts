import type { LengthUnits } from './lengthUnits.js';
import { vanishingText } from './vanishingText.js';

/** `vanishingText` within a sentence: `from as far as 2 m`, `from beyond 6 m`. */
export function seenFromText(mm: number, units: LengthUnits): string {
  const text = vanishingText(mm, units);
  return text.startsWith('beyond') ? `from ${text}` : `from as far as ${text}`;
}
