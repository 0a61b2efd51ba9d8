import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { distanceToLine } from './distanceToLine.js';

/** The seam nearest to a panel point and the place along it; null when none is within reach. */
export function nearestSeam(
  seams: readonly PlacedSeam[],
  xMm: number,
  yMm: number,
  reachMm = 10,
): { readonly placed: PlacedSeam; readonly alongMm: number } | null {
  const near = seams
    .map((placed) => ({ placed, ...distanceToLine(placed.seam.line, xMm, yMm) }))
    .sort((a, b) => a.distanceMm - b.distanceMm)[0];
  return near && near.distanceMm <= reachMm ? near : null;
}
