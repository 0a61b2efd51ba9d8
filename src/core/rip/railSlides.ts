import { bestSlide, slidesByAngle } from './bestSlide.js';
import type { ForecastLines } from './forecastLines.js';
import { type CutLoss, type FrontPlace, type PieceSlides, ripLossMm } from './frontCut.js';
import { frontSegments } from './frontSegments.js';
import { segmentCost } from './placementCost.js';

/** Below this nothing is gained by sliding: nobody sees the joint unless told. */
const leastVisible = 1;
/** A slide must take at least this share off the cost, or it is noise. */
const leastGain = 0.2;

/**
 * Best lengthwise slide of one rail of a front, its three joints taken together; the window
 * equations propose, the picture decides.
 *
 * @param stations where the other pieces lie. @param spareMm longest slide either way.
 * @returns mm in +x; 0 when nobody sees the joints as they are or no slide gains.
 */
export function railSlideMm(
  lines: ForecastLines,
  front: FrontPlace,
  loss: CutLoss,
  stations: PieceSlides,
  rail: 'upper' | 'lower',
  spareMm: number,
): number {
  const costAt = (slideMm: number) =>
    frontSegments(front, loss, { ...stations, [rail]: slideMm }, lines.widthMm)
      .filter(({ kind, edge }) => kind === 'rip' && edge === rail)
      .reduce((sum, segment) => sum + (segmentCost(lines, front, segment).v ?? 0) ** 3, 0);
  if (costAt(0) < leastVisible ** 3) return 0;
  const lossMm = ripLossMm(loss);
  const edgeMm = rail === 'upper' ? front.yMm - lossMm : front.yMm + front.heightMm;
  const { grain } = lines.rip.joint(edgeMm, edgeMm + lossMm, 0);
  // The equations speak of side A; the lower rail is side B and goes the other way.
  const way = rail === 'upper' ? 1 : -1;
  const proposed = slidesByAngle(grain, lossMm, spareMm, lines.distanceMm).map((mm) => way * mm);
  const found = bestSlide(costAt, spareMm, proposed);
  return isGain(found) ? found.slideMm : 0;
}

/** Whether a slide promises enough to be worth a saw cut at each end. */
export function isGain({ cost, unslidCost }: { cost: number; unslidCost: number }): boolean {
  return unslidCost >= leastVisible ** 3 && cost < (1 - leastGain) * unslidCost;
}
