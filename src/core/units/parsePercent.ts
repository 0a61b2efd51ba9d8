import { SeamgrainError } from '../errors.js';

/**
 * Reads a percentage with its sign: `12%`, `6.5 %`.
 * @returns the number before the sign, 0 to 100
 * @throws SeamgrainError `wrongUsage`
 */
export function parsePercent(text: string): number {
  const match = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*%\s*$/.exec(text);
  const percent = Number(match?.[1]);
  if (!match || percent > 100) {
    throw new SeamgrainError('wrongUsage', `'${text}' is not a percentage`, 'write 35% or 6.5%');
  }
  return percent;
}
