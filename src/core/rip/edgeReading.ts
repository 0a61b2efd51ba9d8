import type { Plane } from '../image/plane.js';
import { blockRowsPx, carriedBlocks } from '../seam/carriedBlocks.js';
import { carriedProfile } from '../seam/carriedProfile.js';
import type { SeamStrip } from '../seam/seamStrip.js';
import type { SideReading } from '../seam/seamWood.js';
import { defaultSideWindow, sideField } from '../seam/sideField.js';

/**
 * What a piece will say at an edge that is still to be sawn: its grain and its wood carried to the
 * edge, from its own wood alone. The wood that the saw takes and what lies beyond it have no say,
 * as they have none in a photo of the joint: where the grain turns within a kerf, they would bend
 * the direction read beside it.
 *
 * @param strip the whole panel, eta from its edge. @param side -1: the piece keeps what has the
 *   smaller eta, +1: the larger.
 */
export function edgeReading(strip: SeamStrip, etaMm: number, side: -1 | 1): SideReading {
  const { wood, reachAMm } = woodBeside(strip, etaMm, side);
  const field = sideField(carriedBlocks(wood, strip.pxPerMm), reachAMm, 0, side);
  return { field, profile: carriedProfile(strip, field, etaMm, side) };
}

/** The piece's wood as deep as directions are read, its rows ending at the edge. */
function woodBeside(
  { plane, pxPerMm, reachAMm }: SeamStrip,
  etaMm: number,
  side: -1 | 1,
): { readonly wood: Plane; readonly reachAMm: number } {
  const { width, height, data } = plane;
  const edge = Math.round((etaMm + reachAMm) * pxPerMm);
  const room = side < 0 ? edge : height - edge;
  const unit = blockRowsPx(pxPerMm);
  const deepest = Math.min(room, defaultSideWindow.deepestMm * pxPerMm);
  const rows = Math.min(room, unit * Math.max(1, Math.floor(deepest / unit)));
  const first = side < 0 ? edge - rows : edge;
  const wood = { width, height: rows, data: data.subarray(first * width, (first + rows) * width) };
  return { wood, reachAMm: side < 0 ? rows / pxPerMm : 0 };
}
