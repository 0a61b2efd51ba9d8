import { SeamgrainError } from '../../core/errors.js';

/**
 * Reads one word for each board, in the order of the photos: `A,B,?`.
 *
 * @param words what each may be; `?` stands for not known and reads as null.
 */
export function parseBoardList<T extends string>(
  text: string,
  words: Readonly<Record<string, T>>,
): (T | null)[] {
  return text.split(',').map((part) => {
    const word = part.trim();
    if (word === '?') return null;
    const known = words[word] ?? words[word.toUpperCase()] ?? words[word.toLowerCase()];
    if (known) return known;
    throw new SeamgrainError(
      'wrongUsage',
      `'${word}' is none of ${Object.keys(words).join(', ')} or ?.`,
      `Give one for each board in the order of the photos: ${Object.keys(words).join(',')},?.`,
    );
  });
}
