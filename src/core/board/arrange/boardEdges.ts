import type { Lab } from '../../colour/lab.js';
import type { PanelPhoto } from '../../image/panelPhoto.js';
import { ownLines } from '../../seam/ownLines.js';
import type { SeamStrip } from '../../seam/seamStrip.js';
import type { PanelPlanes, SeamWood } from '../../seam/seamWood.js';
import type { ChannelSums } from '../../seam/visibilityFromSums.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import type { LongEdge } from './boardWay.js';
import { type EdgeSide, edgeSide } from './edgeSide.js';
import { edgeWood } from './edgeWood.js';
import type { FigureWindow } from './figure/figureWindows.js';
import { insideWindows } from './figure/insideWindows.js';
import { lineChannelSums } from './lineChannelSums.js';
import { turnedSide } from './turnedSide.js';

/**
 * One long edge of a board, read for both places that it can take in a joint: as the lower edge
 * of the board above and as the upper edge of the board below.
 */
export interface BoardEdge {
  readonly lengthMm: number;
  readonly above: EdgeSide;
  readonly below: EdgeSide;
  /** Lines of this board near the edge that carry no joint: the board's own figure. */
  readonly own: readonly ChannelSums[];
  /** The figure along lines inside the board, as much wood left out as a joint would lose. */
  readonly inside: readonly (readonly FigureWindow[])[];
  /** Mean colour beside the edge. */
  readonly colour: Lab;
}

/** Own lines and figure lie within this of the edge, mm. */
const mostReachMm = 32;

/**
 * Reads both long edges of a face, jointing allowance taken off. A board laid end for end is the
 * same wood turned half round; its picture is not drawn anew.
 */
export function boardEdges(
  planes: PanelPlanes,
  photo: PanelPhoto,
  options: ArrangeOptions,
): { readonly [edge in LongEdge]: BoardEdge } {
  const { widthMm, heightMm } = photo;
  const { jointMm } = options;
  const reachMm = heightMm - 2 * jointMm;
  const beside = (yMm: number, side: -1 | 1) =>
    edgeWood(planes, yMm, widthMm, side, Math.min(mostReachMm, reachMm));
  return {
    top: boardEdge(beside(jointMm, 1), 1, reachMm, options),
    bottom: boardEdge(beside(heightMm - jointMm, -1), -1, reachMm, options),
  };
}

/** @param side where the wood lies: below its edge 1, above it -1. */
function boardEdge(
  wood: SeamWood,
  side: -1 | 1,
  reachMm: number,
  { jointMm, kerfMm, distanceMm, useColour }: ArrangeOptions,
): BoardEdge {
  const windowMm = (distanceMm * Math.PI) / 180;
  const lostMm = kerfMm + 2 * jointMm;
  const reach = side < 0 ? { aMm: reachMm, bMm: 0 } : { aMm: 0, bMm: reachMm };
  const read = edgeSide(wood, side, reachMm, lostMm);
  const turned = turnedSide(read);
  const own = ownLines(wood, reach, windowMm, () => true);
  return {
    lengthMm: wood.frame.lengthMm,
    ...(side < 0 ? { above: read, below: turned } : { above: turned, below: read }),
    own: own.map((line) => lineChannelSums(line.windows, distanceMm, useColour)),
    inside: insideWindows(wood, side, Math.min(mostReachMm, reachMm), lostMm),
    colour: meanColour(wood),
  };
}

function meanColour({ lab }: SeamWood): Lab {
  const mean = ({ plane: { data } }: SeamStrip) =>
    data.reduce((sum, v) => sum + v, 0) / Math.max(1, data.length);
  return [mean(lab[0]), mean(lab[1]), mean(lab[2])];
}
