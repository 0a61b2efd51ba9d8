import type { VisibilityWord } from '../results/visibilityResult.js';

/**
 * The word for a visibility: below 0.5 disappears, to 1 only if told, to 2 if you look for it,
 * to 4 shows, above jumps out. The words are ours.
 *
 * @param v times over just visible, 0 or more.
 */
export function visibilityWord(v: number): VisibilityWord {
  if (v < 0.5) return 'disappears';
  if (v < 1) return 'only if told';
  if (v < 2) return 'if you look for it';
  return v <= 4 ? 'shows' : 'jumps out';
}
