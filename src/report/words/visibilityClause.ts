import type { VisibilityWord } from '../../core/results/visibilityResult.js';

/**
 * The scale's word as the verb of a sentence: `disappears`, `is seen only if told`, `show`.
 * @param word one of the five words
 * @param plural whether several seams are spoken of
 */
export function visibilityClause(word: VisibilityWord, plural: boolean): string {
  const be = plural ? 'are' : 'is';
  if (word === 'disappears') return plural ? 'disappear' : 'disappears';
  if (word === 'only if told') return `${be} seen only if told`;
  if (word === 'if you look for it') return `${be} seen if you look for it`;
  if (word === 'shows') return plural ? 'show' : 'shows';
  return plural ? 'jump out' : 'jumps out';
}
