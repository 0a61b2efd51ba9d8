import { SeamgrainError } from '../../core/errors.js';

/** Reads where the gap goes. */
export function parsePlace(text: string): 'top' | 'bottom' | 'split' {
  if (text === 'top' || text === 'bottom' || text === 'split') return text;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is no place for a gap`,
    'write top, bottom or split',
  );
}
