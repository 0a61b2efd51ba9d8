import type { SeamWood } from '../../../seam/seamWood.js';
import { edgeFigure } from './edgeFigure.js';
import { type FigureWindow, figureWindows } from './figureWindows.js';

/** Lines inside a board that stand for joints, mm from its edge. */
const distancesMm: readonly number[] = [8, 13, 18, 23];
/** Wood wanted beyond such a line, mm. */
const beyondMm = 6;

/**
 * What true neighbours look like: the figure along lines inside a board, read as if `lostMm` of
 * its width had been taken there.
 *
 * @param wood of the board beside its edge. @param side where it lies: below the edge 1, above -1.
 * @param reachMm how far it was read.
 */
export function insideWindows(
  wood: SeamWood,
  side: -1 | 1,
  reachMm: number,
  lostMm: number,
): FigureWindow[][] {
  return distancesMm
    .filter((mm) => mm + lostMm + beyondMm < reachMm)
    .map((mm) => {
      const deepMm = mm + lostMm;
      const deep = edgeFigure(wood, side * deepMm, side, reachMm - deepMm, lostMm);
      const near = edgeFigure(wood, side * mm, side < 0 ? 1 : -1, mm, lostMm);
      return side < 0 ? figureWindows(deep, near) : figureWindows(near, deep);
    });
}
