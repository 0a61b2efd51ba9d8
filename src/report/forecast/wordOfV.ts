import type { VisibilityWord } from '../../core/results/visibilityResult.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { visibilityClause } from '../words/visibilityClause.js';

/** `disappears`, `is seen only if told`, `cannot be told`: a visibility as a verb. */
export function clauseOfV(v: number | null, plural = false): string {
  const word = wordOfV(v);
  return word ? visibilityClause(word, plural) : 'cannot be told';
}

/** The scale's word for a visibility; null when untold. */
export function wordOfV(v: number | null): VisibilityWord | null {
  return levelOfVisibility(v)?.word ?? null;
}
