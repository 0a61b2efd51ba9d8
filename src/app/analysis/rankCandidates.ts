import { byWorth } from '../../core/pipeline/comparePanels.js';
import { curveVerdict } from '../../core/pipeline/curveVerdict.js';
import type { ComparedFront } from '../../core/results/compareResult.js';
import type { RipCost } from '../../core/rip/ripCurve.js';
import type { Photo } from '../state/project.js';

/** What is known of a candidate so far; null: still to be read. */
export interface CandidateReading {
  readonly curve: readonly RipCost[] | null;
  /** The best place for the front; null while no front is wanted. */
  readonly front: FrontReading | null;
  /** What is to be known of its photo; left out until it is read. */
  readonly notes?: readonly string[];
}

/** The best place for the front on a candidate, or why it cannot be taken from it. */
export type FrontReading =
  | { readonly place: ComparedFront }
  | { readonly place: null; readonly why: string };

/** A panel as a candidate: what a rip in it usually costs, and the best one. */
export interface Candidate extends CandidateReading {
  readonly notes: readonly string[];
  readonly photo: Photo;
  /** Median of V over all rips that can be told; null when none can. */
  readonly vMedian: number | null;
  readonly best: { readonly yMm: number; readonly v: number } | null;
}

/**
 * Candidates as the verb `compare` ranks them; those still waiting come last.
 *
 * @param byFront by the front's best place first.
 */
export function rankCandidates(
  photos: readonly Photo[],
  readings: readonly CandidateReading[],
  byFront: boolean,
): readonly Candidate[] {
  const all = photos.map((photo, index) => {
    const { curve, front, notes = [] } = readings[index]!;
    return { photo, curve, front, notes, verdict: curveVerdict(curve ?? []) };
  });
  const worth = ({ front, verdict }: (typeof all)[number]) => ({
    front: front?.place ?? null,
    ...verdict,
  });
  return all
    .sort((a, b) => byWorth(worth(a), worth(b), byFront))
    .map(({ verdict: { vMedian, vBest, bestYMm }, ...candidate }) => ({
      ...candidate,
      vMedian,
      best: vBest === null || bestYMm === null ? null : { yMm: bestYMm, v: vBest },
    }));
}
