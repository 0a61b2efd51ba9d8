import { type ReadSide, readSide } from '../../seam/readSide.js';
import type { SeamWood } from '../../seam/seamWood.js';
import { type EdgeFigure, edgeFigure } from './figure/edgeFigure.js';

/** One place that an edge can take in a joint: what it says there. */
export interface EdgeSide {
  readonly line: ReadSide;
  readonly figure: EdgeFigure;
}

/**
 * Reads the edge at eta = 0 of a board.
 *
 * @param side where the wood lies: below its edge 1, above it -1. @param reachMm how much there is.
 * @param lostMm width that a joint at this edge has lost.
 */
export function edgeSide(wood: SeamWood, side: -1 | 1, reachMm: number, lostMm: number): EdgeSide {
  return {
    line: readSide(wood, 0, side),
    figure: edgeFigure(wood, 0, side, reachMm, lostMm),
  };
}
