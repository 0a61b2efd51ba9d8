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

/** Candidates by their median rip, the cheapest first; what cannot be told comes last. */
export function rankCandidates(
  photos: readonly Photo[],
  curves: readonly (readonly RipCost[] | null)[],
): readonly Candidate[] {
  const all = photos.map((photo, index): Candidate => {
    const curve = curves[index] ?? null;
    const told = (curve ?? [])
      .flatMap(({ yMm, v }) => (v === null ? [] : [{ yMm, v }]))
      .sort((a, b) => a.v - b.v);
    return { photo, curve, vMedian: median(told.map(({ v }) => v)), best: told[0] ?? null };
  });
  return all.sort((a, b) => (a.vMedian ?? Infinity) - (b.vMedian ?? Infinity));
}

function median(sorted: readonly number[]): number | null {
  if (sorted.length === 0) return null;
  const middle = (sorted.length - 1) / 2;
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2;
}
