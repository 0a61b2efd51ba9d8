import { SeamgrainError } from '../../core/errors.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';

const nearestMm = 100;
const farthestMm = 20_000;

/** Reads a viewing distance: 100 mm to 20 m. */
export function parseDistance(text: string): number {
  const mm = parseLengthMm(text);
  if (mm >= nearestMm && mm <= farthestMm) return mm;
  throw new SeamgrainError(
    'wrongUsage',
    `Nobody looks at a panel from '${text}'.`,
    'Give a viewing distance from 100mm to 20m; 600mm is at the bench.',
  );
}
