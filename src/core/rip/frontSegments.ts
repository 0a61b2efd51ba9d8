import type { CutLoss, FrontPlace, PieceSlides } from './frontCut.js';
import { ripLossMm } from './frontCut.js';

/** Pieces that lie against each other after a front is cut out: which piece, which of its edges. */
export interface SegmentName {
  readonly piece: 'left end' | 'right end' | 'front';
  readonly edge: 'upper' | 'lower' | 'left' | 'right';
}

/** One glued joint or one side of the reveal, as two edges of the uncut panel that come together. */
export interface FrontSegment extends SegmentName {
  readonly kind: 'rip' | 'crosscut';
  /** Where the edges lie on the uncut panel: y of a rip, x of a crosscut, mm. */
  readonly etaAMm: number;
  readonly etaBMm: number;
  /** From where to where side B meets side A: x of a rip, y of a crosscut, mm. */
  readonly fromMm: number;
  readonly toMm: number;
  /** How far side A (above, left) moves along the joint against side B. */
  readonly slideMm: number;
  /** Glued, or a side of the reveal that stays open. */
  readonly glued: boolean;
}

/** Shorter joints than this are no joints: the front runs to the panel's end. */
const leastMm = 5;

/**
 * The joints and reveals that cutting a front out of a panel makes: each end piece against both
 * rails, the front against both rails and both end pieces.
 *
 * A rip loses kerf + 2 dressings of the wood beside the front; an end piece that stays leaves the
 * lines as they were, with a kerf's gap in them; one that moves in brings wood together that lay
 * a kerf apart, and carries its grain along both rails: delta = L cos(theta) -+ k sin(theta).
 *
 * @param panelWidthMm length of the panel along the grain.
 */
export function frontSegments(
  front: FrontPlace,
  loss: CutLoss,
  slides: PieceSlides,
  panelWidthMm: number,
): FrontSegment[] {
  const { xMm, yMm, widthMm, heightMm } = front;
  const { kerfMm } = loss;
  const lossMm = ripLossMm(loss);
  const [bottomMm, endMm] = [yMm + heightMm, xMm + widthMm];
  const pieces = [
    { piece: 'left end', fromMm: 0, toMm: xMm - kerfMm, moved: slides.left },
    { piece: 'front', fromMm: xMm, toMm: endMm, moved: 0 },
    { piece: 'right end', fromMm: endMm + kerfMm, toMm: panelWidthMm, moved: slides.right },
  ] as const;
  const rips = pieces.flatMap(({ piece, fromMm, toMm, moved }): FrontSegment[] => {
    if (toMm - fromMm < leastMm) return [];
    const glued = piece !== 'front';
    const upper = slides.upper - moved;
    const lower = moved - slides.lower;
    return [
      {
        ...{ piece, glued, kind: 'rip', edge: 'upper' },
        ...{ etaAMm: yMm - lossMm, etaBMm: yMm, fromMm, toMm, slideMm: upper },
      },
      {
        ...{ piece, glued, kind: 'rip', edge: 'lower' },
        ...{ etaAMm: bottomMm, etaBMm: bottomMm + lossMm },
        // Side B is the rail here: the piece lies further along it by its own slide.
        ...{ fromMm: Math.max(0, fromMm + lower), toMm: Math.min(panelWidthMm, toMm + lower) },
        slideMm: lower,
      },
    ];
  });
  const reveal = { piece: 'front', kind: 'crosscut', glued: false, slideMm: 0 } as const;
  const span = { fromMm: yMm, toMm: bottomMm };
  const ends: FrontSegment[] = [
    { ...reveal, ...span, edge: 'left', etaAMm: xMm - slides.left, etaBMm: xMm },
    { ...reveal, ...span, edge: 'right', etaAMm: endMm, etaBMm: endMm - slides.right },
  ];
  return [
    ...rips,
    ...ends.filter(({ etaAMm }) => etaAMm > leastMm && etaAMm < panelWidthMm - leastMm),
  ];
}
