import { SeamgrainError } from '../../core/errors.js';

/** Reads a plain number above zero. */
export function parsePositive(text: string): number {
  const value = Number(text);
  if (text.trim() !== '' && Number.isFinite(value) && value > 0) return value;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not a number above zero.`,
    'Write it like 6.5, without a unit.',
  );
}
