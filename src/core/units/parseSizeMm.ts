import { SeamgrainError } from '../errors.js';
import { parseLengthMm } from './parseLengthMm.js';

/** A width (x, along the panel's length) and a height (y, across it). */
export interface SizeMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Reads `LENGTHxLENGTH` (also `×`), each with its unit: `36in x 19 1/2in`, `900mmx500mm`.
 * First x (to the right), then y (down).
 * @returns both in mm, above zero
 * @throws SeamgrainError `badLength`
 */
export function parseSizeMm(text: string): SizeMm {
  const parts = text.split(/[x×*]/i);
  if (parts.length !== 2) {
    throw new SeamgrainError(
      'badLength',
      `'${text}' is not a size`,
      'write two lengths with x between them: 36inx20in or 900mmx500mm',
    );
  }
  const [widthMm, heightMm] = parts.map((part) => parseLengthMm(part)) as [number, number];
  if (widthMm === 0 || heightMm === 0) {
    throw new SeamgrainError('badLength', `'${text}' has no area`, 'both lengths must be above 0');
  }
  return { widthMm, heightMm };
}
