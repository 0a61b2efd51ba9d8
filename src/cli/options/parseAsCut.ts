import { SeamgrainError } from '../../core/errors.js';
import type { PieceMeasure } from '../../core/shop/layout/computeAsCut.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';

/**
 * Reads what a piece measures: `upper rail=7 3/4in`, `strip=4in,4 1/32in` (width at the left and
 * right end), `front=x14in` (length), `front=4inx14in` (width x length).
 */
export function parseAsCut(text: string): PieceMeasure {
  const match = /^\s*([a-z0-9 -]+?)\s*=\s*([^x×]*)(?:[x×](.+))?$/i.exec(text);
  if (!match) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' is not a measured piece`,
      'write "upper rail=7 3/4in", "strip=4in,4 1/32in" or "front=x14in"',
    );
  }
  const widths = match[2]!.trim() === '' ? [] : match[2]!.split(',').map((w) => parseLengthMm(w));
  if (widths.length > 2 || (widths.length === 0 && match[3] === undefined)) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' has ${widths.length} widths`,
      'give one width, or two for the left and the right end',
    );
  }
  return {
    piece: match[1]!.toLowerCase(),
    ...(widths.length === 1 && { widthMm: widths[0]! }),
    ...(widths.length === 2 && { widthMm: [widths[0]!, widths[1]!] as const }),
    ...(match[3] !== undefined && { lengthMm: parseLengthMm(match[3]) }),
  };
}
