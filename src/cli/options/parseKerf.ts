import { SeamgrainError } from '../../core/errors.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';

const widestMm = 25;

/** Reads a kerf: above zero, at most 25 mm. */
export function parseKerf(text: string): number {
  const mm = parseLengthMm(text);
  if (mm > 0 && mm <= widestMm) return mm;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not the kerf of a saw.`,
    'Give the width of the cut, such as 1/8in or 2.4mm.',
  );
}
