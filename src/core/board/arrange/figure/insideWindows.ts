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
 * @param wood of the board above its lower edge. @param reachMm how far it was read.
 */
export function insideWindows(wood: SeamWood, reachMm: number, lostMm: number): FigureWindow[][] {
  return distancesMm
    .filter((mm) => mm + lostMm + beyondMm < reachMm)
    .map((mm) => {
      const above = edgeFigure(wood, -mm - lostMm, -1, reachMm - mm - lostMm, lostMm);
      return figureWindows(above, edgeFigure(wood, -mm, 1, mm, lostMm));
    });
}
