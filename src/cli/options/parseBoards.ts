import { SeamgrainError } from '../../core/errors.js';

/**
 * Reads numbers of boards as a maker counts them, from 1 in the order of the photos.
 *
 * @returns the same from 0, between `least` and `most` of them.
 */
export function parseBoards(text: string, least: number, most: number): number[] {
  const parts = text.split(',').map((part) => part.trim());
  if (
    parts.length >= least &&
    parts.length <= most &&
    parts.every((part) => /^[1-9]\d*$/.test(part))
  ) {
    return parts.map((part) => Number(part) - 1);
  }
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' does not name ${most === 1 ? 'a board' : 'boards'}.`,
    `Boards are numbered from 1 in the order of their photos: ${most === 1 ? '3' : '2,5'}.`,
  );
}
