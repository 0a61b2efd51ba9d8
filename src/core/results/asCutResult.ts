/** One piece as measured against the plan. */
export interface MeasuredPiece {
  readonly name: string;
  readonly plannedWidthMm: number;
  /** Mean of the two ends; the plan's where it was not measured. */
  readonly widthMm: number;
  /** Left end minus right end. */
  readonly taperMm: number;
  readonly plannedLengthMm: number;
  readonly lengthMm: number;
  readonly isMeasured: boolean;
}

/** What the measured pieces make. */
export interface AsCutResult {
  readonly schema: 'seamgrain/asCut@1';
  readonly pieces: readonly MeasuredPiece[];
  /** Kerfs and dressing really lost across the grain; null until every course is measured. */
  readonly lostAcrossMm: number | null;
  readonly plannedLossMm: number;
  readonly openings: readonly {
    readonly front: string;
    readonly widthMm: number;
    readonly lengthMm: number;
    /** What the front can still be, with the trim asked for. */
    readonly frontWidthMm: number;
    readonly frontLengthMm: number;
    /** Positive: the front as cut is this much smaller than opening less trim. */
    readonly shortAcrossMm: number;
    readonly shortAlongMm: number;
    /** Trim a long edge that would still give the front that was asked for; negative: not possible. */
    readonly trimForAskedMm: number;
  }[];
  /** The glued face now to be expected. */
  readonly gluedFace: { readonly widthMm: number; readonly lengthMm: number };
  /** Against the face asked for; null when none was. */
  readonly spareAcrossMm: number | null;
  /** What to do, most pressing first. */
  readonly advice: readonly string[];
  readonly notes: readonly string[];
}
