import type { Cue } from '../results/visibilityResult.js';
import { cubicSum } from './cubicSum.js';

/** Visibility per cue, times over just visible; null or absent where the photo cannot tell. */
export type CueValues = { readonly [cue in Cue]?: number | null };

/**
 * Pools the cues at one place and names the strongest.
 *
 * @param values masked cues.
 * @returns v = (sum V^3)^(1/3) and the largest cue; both null when nothing is told. The cue is
 *   null as well when every value is 0.
 */
export function poolCues(values: CueValues): {
  readonly v: number | null;
  readonly cue: Cue | null;
} {
  let cue: Cue | null = null;
  let most = 0;
  for (const [name, value] of Object.entries(values)) {
    if (typeof value !== 'number' || !(value > most)) continue;
    most = value;
    cue = name as Cue;
  }
  return { v: cubicSum(Object.values(values)), cue };
}
