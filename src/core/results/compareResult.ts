import type { ForecastEdge, ForecastPiece } from './forecastResult.js';
import type { Cue } from './visibilityResult.js';

/** How much of a board's width is sawn which way; shares that sum to 1. */
export interface CutShares {
  readonly flatsawn: number;
  readonly rift: number;
  readonly quartered: number;
}

/** Shares of the width by cut, each with the least and the most that it may be. */
export interface CutEstimate {
  readonly cut: CutShares;
  readonly least: CutShares;
  readonly most: CutShares;
}

/** Where a front is best taken from a candidate, and what its joints show there. */
export interface ComparedFront {
  /** The front's upper left corner on the candidate. */
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** (sum of V^3 over all joints and reveals)^(1/3). */
  readonly v: number;
  readonly worst: {
    readonly piece: ForecastPiece;
    readonly edge: ForecastEdge;
    readonly v: number | null;
    readonly cue: Cue | null;
  };
}

/** What sets a candidate apart from the one ranked before it (the first: from the second). */
export interface CompareReason {
  readonly by: 'front' | 'median' | 'best' | 'untold' | 'equal';
  /** What the eye catches on the worse of the two. */
  readonly cue: Cue | null;
  /** The two values of V that were compared: this candidate's and the other's. */
  readonly v: number | null;
  readonly otherV: number | null;
}

/** One candidate for the panel. */
export interface ComparedCandidate {
  readonly photo: string;
  /** 1 = the best. */
  readonly rank: number;
  /** Drawn by the wood model, not photographed. */
  readonly isImagined: boolean;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Forecast visibility of a rip anywhere on it: median and best over the width. */
  readonly vMedian: number | null;
  readonly vBest: number | null;
  readonly bestYMm: number | null;
  /** The best place for the front asked for; null without one, or where it does not fit. */
  readonly front: ComparedFront | null;
  /** Null where there is nothing to compare it with. */
  readonly decides: CompareReason | null;
  /** Null from a photo of the face alone. */
  readonly cut: CutShares | null;
  /** What the face alone tells of it, within error; only where no end tells and the face does. */
  readonly cutFromFace?: CutEstimate;
  /** Seasonal gap of a front from it; null without a species. */
  readonly gapMm: number | null;
  readonly notes: readonly string[];
}

/** The answer of `compare`. */
export interface CompareResult {
  readonly schema: 'seamgrain/compare@1';
  readonly distanceMm: number;
  readonly kerfMm: number;
  readonly dressMm: number;
  /** Size of the front asked for; null ranks by the median rip. */
  readonly front: { readonly widthMm: number; readonly heightMm: number } | null;
  readonly candidates: readonly ComparedCandidate[];
}
