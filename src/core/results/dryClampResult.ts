/** The gap at one place of a dry-clamped joint. */
export interface JointGapReading {
  readonly atMm: number;
  /** Null where the photo cannot tell it from the board's own dark lines. */
  readonly gapMm: number | null;
  readonly gapSeMm: number | null;
  /** What it can be at most; equals the photo's limit where `gapMm` is null. */
  readonly atMostMm: number;
}

/** How the gap runs along the joint. */
export type JointShape = 'tight' | 'hollow' | 'convex' | 'open left' | 'open right' | 'uneven';

/** A dry-clamped joint against a slip of paper, and what to do about it. */
export interface DryClampResult {
  readonly schema: 'seamgrain/dryClamp@1';
  readonly pxPerMm: number | null;
  /** Smallest gap that this photo can tell from the wood. */
  readonly limitMm: number | null;
  /** Where the photo cannot tell a slip of paper: the px/mm it would take; else null. */
  readonly neededPxPerMm: number | null;
  readonly paperMm: number;
  readonly readings: readonly JointGapReading[];
  readonly verdict: 'closes' | 'dress' | 'cannot tell';
  readonly shape: JointShape | null;
  readonly worst: { readonly atMm: number; readonly gapMm: number } | null;
  /** Null where nothing needs dressing or nothing can be told. */
  readonly dress: {
    readonly piece: string;
    /** At the place that loses most. */
    readonly takeMm: number;
    readonly spareLeftMm: number | null;
    readonly isEnough: boolean | null;
  } | null;
  readonly words: readonly string[];
  readonly notes: readonly string[];
}
