import { byVerdict, curveVerdict } from '../../core/pipeline/curveVerdict.js';
import type { RipCost } from '../../core/rip/ripCurve.js';
import type { Photo } from '../state/project.js';

/** A panel as a candidate: what a rip in it usually costs, and the best one. */
export interface Candidate {
  readonly photo: Photo;
  readonly curve: readonly RipCost[] | null;
  /** Median of V over all rips that can be told; null when none can. */
  readonly vMedian: number | null;
  readonly best: { readonly yMm: number; readonly v: number } | null;
}

/** Candidates as the verb `compare` ranks them; those still waiting come last. */
export function rankCandidates(
  photos: readonly Photo[],
  curves: readonly (readonly RipCost[] | null)[],
): readonly Candidate[] {
  const all = photos.map((photo, index) => {
    const curve = curves[index] ?? null;
    return { photo, curve, verdict: curveVerdict(curve ?? []) };
  });
  return all
    .sort((a, b) => byVerdict(a.verdict, b.verdict))
    .map(({ photo, curve, verdict: { vMedian, vBest, bestYMm } }) => ({
      photo,
      curve,
      vMedian,
      best: vBest === null || bestYMm === null ? null : { yMm: bestYMm, v: vBest },
    }));
}
