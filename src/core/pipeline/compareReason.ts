import type { ComparedCandidate, CompareReason } from '../results/compareResult.js';
import type { Cue } from '../results/visibilityResult.js';

/** A candidate before it has a rank, and what the eye catches in its typical rip. */
export interface JudgedCandidate {
  readonly candidate: Pick<ComparedCandidate, 'front' | 'vMedian' | 'vBest'>;
  readonly cue: Cue | null;
}

/** Differences of V smaller than this are none to the eye. */
const alike = 0.05;

/**
 * Why a candidate stands where it does: what sets it apart from the one before it, the first from
 * the second.
 *
 * @param byFront the ranking goes by the front's best place.
 */
export function compareReason(
  ranked: readonly JudgedCandidate[],
  k: number,
  byFront: boolean,
): CompareReason | null {
  const other = ranked[k === 0 ? 1 : k - 1];
  if (!other) return null;
  const [one, two] = [ranked[k].candidate, other.candidate];
  const worse = k === 0 ? other : ranked[k];
  const values = [
    ...(byFront
      ? [
          {
            by: 'front' as const,
            v: one.front?.v ?? null,
            otherV: two.front?.v ?? null,
            cue: worse.candidate.front?.worst.cue ?? null,
          },
        ]
      : []),
    { by: 'median' as const, v: one.vMedian, otherV: two.vMedian, cue: worse.cue },
    { by: 'best' as const, v: one.vBest, otherV: two.vBest, cue: worse.cue },
  ];
  for (const value of values) {
    if (value.v === null && value.otherV === null) continue;
    if (value.v === null || value.otherV === null) return { ...value, by: 'untold', cue: null };
    if (Math.abs(value.v - value.otherV) >= alike) return value;
  }
  return { by: 'equal', cue: null, v: values[0].v, otherV: values[0].otherV };
}
