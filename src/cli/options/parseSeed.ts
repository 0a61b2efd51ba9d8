import { SeamgrainError } from '../../core/errors.js';

const largestSeed = 2 ** 32 - 1;

/** Reads the seed of the draws: a whole number from 0 to 4294967295. */
export function parseSeed(text: string): number {
  const value = Number(text);
  if (/^\d+$/.test(text) && value <= largestSeed) return value;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not a seed.`,
    `Write a whole number from 0 to ${largestSeed}.`,
  );
}
