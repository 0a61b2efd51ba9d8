/** A front as it lies on the uncut panel, before trimming, mm from the panel's upper left corner. */
export interface FrontPlace {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * What becomes of the end pieces: they stay at their stations, and the opening is two kerfs
 * longer than the front; or each moves in by a kerf and closes its end.
 */
export type EndPieces = 'stay' | 'close';

/** How far each piece moves in +x from its station; the front stays where it is, mm. */
export interface PieceSlides {
  readonly left: number;
  readonly right: number;
  readonly upper: number;
  readonly lower: number;
}

/** What the cuts take. */
export interface CutLoss {
  /** Width of the saw cut, mm. */
  readonly kerfMm: number;
  /** Dressed off each jointed edge of a rip, mm. */
  readonly dressMm: number;
}

/** Width lost at a rip: the kerf and both dressed edges. */
export function ripLossMm({ kerfMm, dressMm }: CutLoss): number {
  return kerfMm + 2 * dressMm;
}

/** Where the end pieces come to lie, the rails unmoved. */
export function endSlides(ends: EndPieces, kerfMm: number): PieceSlides {
  const inward = ends === 'close' ? kerfMm : 0;
  return { left: inward, right: -inward, upper: 0, lower: 0 };
}
