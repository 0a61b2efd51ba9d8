import type { Lab } from '../../colour/lab.js';
import type { PanelPhoto } from '../../image/panelPhoto.js';
import { readSide } from '../../seam/lineMeasures.js';
import { ownLines } from '../../seam/ownLines.js';
import type { SeamFrame } from '../../seam/seamFrame.js';
import { type LineSide, type PanelPlanes, type SeamWood, seamWood } from '../../seam/seamWood.js';
import type { ChannelSums } from '../../seam/visibilityFromSums.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import type { LongEdge } from './boardWay.js';
import { type EdgeFigure, edgeFigure } from './figure/edgeFigure.js';
import type { FigureWindow } from './figure/figureWindows.js';
import { insideWindows } from './figure/insideWindows.js';
import { lineChannelSums } from './lineChannelSums.js';
import { turnedWood } from './turnedWood.js';

/** One place that an edge can take in a joint: what it says there. */
export interface EdgeSide {
  readonly line: LineSide;
  readonly figure: EdgeFigure;
}

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
 * Reads one long edge of a board, jointing allowance taken off. A board turned end for end is
 * read through a frame turned half round; its picture is not drawn anew.
 */
export function boardEdge(
  planes: PanelPlanes,
  photo: PanelPhoto,
  edge: LongEdge,
  options: ArrangeOptions,
): BoardEdge {
  const { jointMm, distanceMm, useColour } = options;
  const windowMm = (distanceMm * Math.PI) / 180;
  const lostMm = options.kerfMm + 2 * jointMm;
  const reachMm = photo.heightMm - 2 * jointMm;
  const upright = edgeFrame(photo, edge, jointMm, false);
  const turned = edgeFrame(photo, edge, jointMm, true);
  const [aboveFrame, belowFrame] = edge === 'bottom' ? [upright, turned] : [turned, upright];
  const above = seamWood(planes, aboveFrame, reachMm, 0);
  const below = turnedWood(above, belowFrame);
  const own = ownLines(above, { aMm: reachMm, bMm: 0 }, windowMm, () => true);
  return {
    lengthMm: photo.widthMm,
    above: edgeSide(above, -1, reachMm, lostMm),
    below: edgeSide(below, 1, reachMm, lostMm),
    own: own.map((line) => lineChannelSums(line.windows, distanceMm, useColour)),
    inside: insideWindows(above, Math.min(mostReachMm, reachMm), lostMm),
    colour: meanColour(above),
  };
}

function edgeSide(wood: SeamWood, side: -1 | 1, reachMm: number, lostMm: number): EdgeSide {
  const line = { wood, etaMm: 0 };
  return {
    line: { ...line, reading: readSide(line, side, false) },
    figure: edgeFigure(wood, 0, side, reachMm, lostMm),
  };
}

function meanColour({ lab }: SeamWood): Lab {
  const mean = ({ plane: { data } }: (typeof lab)[number]) =>
    data.reduce((sum, v) => sum + v, 0) / Math.max(1, data.length);
  return [mean(lab[0]), mean(lab[1]), mean(lab[2])];
}

function edgeFrame(
  photo: PanelPhoto,
  edge: LongEdge,
  jointMm: number,
  isTurned: boolean,
): SeamFrame {
  const y = edge === 'bottom' ? photo.heightMm - jointMm : jointMm;
  const way = isTurned ? -1 : 1;
  return {
    kind: 'rip',
    originXMm: isTurned ? photo.widthMm : 0,
    originYMm: y,
    ex: way,
    ey: 0,
    nx: 0,
    ny: way,
    lengthMm: photo.widthMm,
  };
}
