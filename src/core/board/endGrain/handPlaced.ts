/** What a maker marked on a photo of an end, panel mm. */
export interface HandPlaced {
  /** Lines laid along a ring. */
  readonly tangents: readonly TangentLine[];
  readonly pith: { readonly xMm: number; readonly yMm: number } | null;
}

/** A straight line laid along a ring by hand. */
export interface TangentLine {
  readonly x1Mm: number;
  readonly y1Mm: number;
  readonly x2Mm: number;
  readonly y2Mm: number;
}
