import type { PanelPhoto } from '../../image/panelPhoto.js';
import type { LineMeasures } from '../../seam/lineMeasures.js';
import { ownLines } from '../../seam/ownLines.js';
import type { SeamFrame } from '../../seam/seamFrame.js';
import { type PanelPlanes, type SeamWood, seamWood } from '../../seam/seamWood.js';
import type { LongEdge } from './boardWay.js';

/**
 * One long edge of a board, read for both places that it can take in a joint: as the lower edge
 * of the board above and as the upper edge of the board below.
 */
export interface BoardEdge {
  readonly lengthMm: number;
  readonly above: SeamWood;
  readonly below: SeamWood;
  /** Lines of this board near the edge that carry no joint: the board's own figure. */
  readonly own: readonly LineMeasures[];
}

/**
 * Reads one long edge of a board, jointing allowance taken off. A board turned end for end is
 * read through a frame turned half round; its picture is not drawn anew.
 *
 * @param windowMm length of a stretch, mm (a degree of visual angle).
 */
export function boardEdge(
  planes: PanelPlanes,
  photo: PanelPhoto,
  edge: LongEdge,
  jointMm: number,
  windowMm: number,
): BoardEdge {
  const reachMm = photo.heightMm - 2 * jointMm;
  const upright = edgeFrame(photo, edge, jointMm, false);
  const turned = edgeFrame(photo, edge, jointMm, true);
  const [aboveFrame, belowFrame] = edge === 'bottom' ? [upright, turned] : [turned, upright];
  const above = seamWood(planes, aboveFrame, reachMm, 0);
  const below = seamWood(planes, belowFrame, 0, reachMm);
  const own = ownLines(above, { aMm: reachMm, bMm: 0 }, windowMm, () => true);
  return { lengthMm: photo.widthMm, above, below, own };
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
