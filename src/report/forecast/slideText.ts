import type { LengthUnits } from '../words/lengthUnits.js';
import { smallLengthText } from '../words/smallLengthText.js';

/** `3/16 in to the left`: a slide along the panel. */
export function slideText(slideMm: number, units: LengthUnits): string {
  return `${smallLengthText(slideMm, units)} to the ${slideMm > 0 ? 'right' : 'left'}`;
}
