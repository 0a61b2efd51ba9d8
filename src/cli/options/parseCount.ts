import { SeamgrainError } from '../../core/errors.js';

/** Reads a number of fronts: 1 to 12. */
export function parseCount(text: string): number {
  const count = Number(text);
  if (/^\d+$/.test(text.trim()) && count >= 1 && count <= 12) return count;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not a number of fronts.`,
    'Give a whole number from 1 to 12.',
  );
}
