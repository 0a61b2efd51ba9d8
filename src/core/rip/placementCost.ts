import type { SeamReach } from '../seam/seamReach.js';
import type { PooledVisibility } from '../seam/visibilityFromSums.js';
import type { ForecastLines } from './forecastLines.js';
import type { CutLoss, FrontPlace, PieceSlides } from './frontCut.js';
import { type FrontSegment, frontSegments } from './frontSegments.js';
import { segmentVisibility } from './segmentVisibility.js';

/** One joint or reveal of a placement with its visibility. */
export interface SegmentCost extends PooledVisibility {
  readonly segment: FrontSegment;
}

/** What a front taken from one place would cost. */
export interface PlacementCost {
  readonly front: FrontPlace;
  /** Sum of V^3 over its joints and reveals. */
  readonly cost: number;
  readonly worst: SegmentCost;
  readonly segments: readonly SegmentCost[];
}

/** Scores every joint and reveal of a front by picture, on the lines that the panel keeps. */
export function placementCost(
  lines: ForecastLines,
  front: FrontPlace,
  loss: CutLoss,
  slides: PieceSlides,
): PlacementCost {
  const segments = frontSegments(front, loss, slides, lines.widthMm).map((segment) => ({
    segment,
    ...segmentCost(lines, front, segment),
  }));
  return {
    front,
    cost: segments.reduce((sum, { v }) => sum + (v ?? 0) ** 3, 0),
    worst: segments.reduce((a, b) => ((b.v ?? 0) > (a.v ?? 0) ? b : a)),
    segments,
  };
}

/** Visibility of one joint or reveal. An end that stays where it was has moved no line: V = 0. */
export function segmentCost(
  lines: ForecastLines,
  front: FrontPlace,
  segment: FrontSegment,
): PooledVisibility {
  const { kind, glued, etaAMm, etaBMm, slideMm, fromMm, toMm } = segment;
  if (etaAMm === etaBMm && slideMm === 0) return { v: 0, cue: null };
  const cut = kind === 'rip' ? lines.rip : lines.crosscut;
  const joint = cut.joint(etaAMm, etaBMm, slideMm);
  const own = cut.own(etaAMm, etaBMm, reachOfSegment(lines, front, segment));
  return segmentVisibility(glued ? joint.sums : joint.openSums, own, fromMm, toMm);
}

/**
 * How far the pieces on either side of a segment go: the front to its other edge, what is beside
 * it to the panel's.
 */
export function reachOfSegment(
  lines: ForecastLines,
  front: FrontPlace,
  { kind, edge, etaAMm, etaBMm }: FrontSegment,
): SeamReach {
  const [size, across] =
    kind === 'rip' ? [front.heightMm, lines.heightMm] : [front.widthMm, lines.widthMm];
  const first = edge === 'upper' || edge === 'left';
  return first ? { aMm: etaAMm, bMm: size } : { aMm: size, bMm: across - etaBMm };
}
