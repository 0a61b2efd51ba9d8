/** How much of a board's width is sawn which way; shares that sum to 1. */
export interface CutShares {
  readonly flatsawn: number;
  readonly rift: number;
  readonly quartered: number;
}

/** One candidate for the panel. */
export interface ComparedCandidate {
  readonly photo: string;
  /** 1 = the best. */
  readonly rank: number;
  /** Forecast visibility of a rip anywhere on it: median and best over the width. */
  readonly vMedian: number | null;
  readonly vBest: number | null;
  readonly bestYMm: number | null;
  /** Null from a photo of the face alone. */
  readonly cut: CutShares | null;
  /** Seasonal gap of a front from it; null without a species. */
  readonly gapMm: number | null;
  readonly notes: readonly string[];
}

/** The answer of `compare`. */
export interface CompareResult {
  readonly schema: 'seamgrain/compare@1';
  readonly candidates: readonly ComparedCandidate[];
}
