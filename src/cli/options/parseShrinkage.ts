import { SeamgrainError } from '../../core/errors.js';
import { parsePercent } from '../../core/units/parsePercent.js';

/** Reads radial and tangential shrinkage: `4.8%,9.9%`. */
export function parseShrinkage(text: string): { radial: number; tangential: number } {
  const parts = text.split(',');
  if (parts.length !== 2) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' is not a pair of shrinkages`,
      'write radial, then tangential, green to ovendry: 4.8%,9.9%',
    );
  }
  return { radial: parsePercent(parts[0]!), tangential: parsePercent(parts[1]!) };
}
