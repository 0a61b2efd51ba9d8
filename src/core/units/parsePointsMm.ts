import { SeamgrainError } from '../errors.js';
import { parseLengthMm } from './parseLengthMm.js';

/** A place on the panel, mm from its top left corner, x right, y down. */
export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * Reads places on the panel, `x,y x,y …`, each length with its unit: `7 1/2in,3in 20in,30in`.
 * @param text the points, comma inside a point, space between points
 * @param count how many there must be
 * @throws SeamgrainError `badLength`
 */
export function parsePointsMm(text: string, count: number): PointMm[] {
  const parts = text.split(/[,;]/);
  if (parts.length !== count + 1) throw notPoints(text, count);
  const lengths = parts.flatMap((part, index) =>
    index === 0 || index === count ? [parseLengthMm(part, 'any')] : splitPair(part, text, count),
  );
  return Array.from({ length: count }, (_, index) => ({
    xMm: lengths[2 * index]!,
    yMm: lengths[2 * index + 1]!,
  }));
}

/** `3in 7 1/2in` at the one space where both halves are lengths. */
function splitPair(part: string, text: string, count: number): [number, number] {
  const words = part.trim().split(/\s+/);
  const readings = words.flatMap((_, at) => {
    const first = tryLength(words.slice(0, at).join(' '));
    const second = tryLength(words.slice(at).join(' '));
    return first === null || second === null ? [] : [[first, second] as [number, number]];
  });
  if (readings.length !== 1) throw notPoints(text, count);
  return readings[0]!;
}

function tryLength(text: string): number | null {
  try {
    return parseLengthMm(text, 'any');
  } catch (error) {
    if (error instanceof SeamgrainError) return null;
    throw error;
  }
}

function notPoints(text: string, count: number): SeamgrainError {
  const form = Array.from({ length: count }, () => 'x,y').join(' ');
  return new SeamgrainError(
    'badLength',
    `'${text}' is not '${form}'`,
    `write ${count} ${count === 1 ? 'point' : 'points'} with units, such as ${Array.from({ length: count }, (_, index) => `${index + 1}0in,${index + 2}in`).join(' ')}`,
  );
}
