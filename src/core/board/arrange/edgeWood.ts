import type { Plane } from '../../image/plane.js';
import { blockRowsPx, carriedBlocks } from '../../seam/carriedBlocks.js';
import type { SeamFrame } from '../../seam/seamFrame.js';
import { type SeamStrip, seamStrip } from '../../seam/seamStrip.js';
import type { PanelPlanes, SeamWood } from '../../seam/seamWood.js';

/** A row of which an edge cuts off no more than this counts as whole, px. */
const cutPx = 1e-6;

/**
 * The wood of a board beside one of its long edges, eta = 0 at the edge. Edges lie along the
 * photo's rows, so its rows are taken as they are; one that the edge cuts through is left out.
 *
 * @param yMm where the edge lies in the photo. @param lengthMm of the board.
 * @param side where the wood lies: below its edge 1, above it -1. @param reachMm how much of it.
 */
export function edgeWood(
  planes: PanelPlanes,
  yMm: number,
  lengthMm: number,
  side: -1 | 1,
  reachMm: number,
): SeamWood {
  const { pxPerMm, lab } = planes;
  const frame = edgeFrame(yMm, lengthMm);
  const strip = rowsBeside(planes, yMm, side, reachMm);
  const scale = pxPerMm / lab.reduceBy;
  const [aMm, bMm] = side < 0 ? [strip.reachAMm, 0] : [0, strip.reachBMm];
  const beside = (colour: Plane) => seamStrip(colour, scale, frame, scale, aMm, bMm);
  return {
    frame,
    strip,
    blocks: carriedBlocks(strip.plane, pxPerMm),
    lab: [beside(lab.lightness), beside(lab.a), beside(lab.b)],
  };
}

/** As many rows from the edge on as make whole blocks. */
function rowsBeside(
  { pxPerMm, logLuminance }: PanelPlanes,
  yMm: number,
  side: -1 | 1,
  reachMm: number,
): SeamStrip {
  const { width, height, data } = logLuminance;
  const unit = blockRowsPx(pxPerMm);
  const line = yMm * pxPerMm;
  const edge = side < 0 ? Math.min(height, Math.floor(line + cutPx)) : Math.ceil(line - cutPx);
  const within = Math.min(reachMm * pxPerMm + cutPx, side < 0 ? edge : height - edge);
  const rows = unit * Math.floor(within / unit);
  const first = side < 0 ? edge - rows : edge;
  const beside = data.subarray(first * width, (first + rows) * width);
  const plane = { width, height: rows, data: beside };
  const reachAMm = yMm - first / pxPerMm;
  return { plane, pxPerMm, reachAMm, reachBMm: rows / pxPerMm - reachAMm };
}

function edgeFrame(yMm: number, lengthMm: number): SeamFrame {
  return { kind: 'rip', originXMm: 0, originYMm: yMm, ex: 1, ey: 0, nx: 0, ny: 1, lengthMm };
}
