import { carriedBlocks } from '../../seam/carriedBlocks.js';
import type { SeamFrame } from '../../seam/seamFrame.js';
import { type SeamStrip, seamStrip } from '../../seam/seamStrip.js';
import type { PanelPlanes, SeamWood } from '../../seam/seamWood.js';

/** The wood of one face beside its long edges: below its upper one, above its lower one. */
export interface BoardWood {
  readonly top: SeamWood;
  readonly bottom: SeamWood;
}

/**
 * Reads the wood of a board beside its two long edges, once where what is wanted of them overlaps.
 *
 * @param lengthMm of the board. @param topMm, bottomMm where the edges lie, y of the photo.
 * @param reachMm how much wood is wanted beside an edge, if there is so much.
 */
export function boardWood(
  planes: PanelPlanes,
  lengthMm: number,
  topMm: number,
  bottomMm: number,
  reachMm: number,
): BoardWood {
  const widthMm = bottomMm - topMm;
  if (widthMm <= 2 * reachMm) {
    const whole = woodBelow(planes, lengthMm, topMm, bottomMm);
    return { top: whole, bottom: seenFrom(whole, widthMm) };
  }
  const lower = woodBelow(planes, lengthMm, bottomMm - reachMm, bottomMm);
  return {
    top: woodBelow(planes, lengthMm, topMm, topMm + reachMm),
    bottom: seenFrom(lower, reachMm),
  };
}

/**
 * The wood between two lines, eta counted from the upper one. They lie along the photo's rows, which
 * are taken as they are; those that a line cuts through are left out.
 */
function woodBelow(
  { pxPerMm, logLuminance, lab }: PanelPlanes,
  lengthMm: number,
  topMm: number,
  bottomMm: number,
): SeamWood {
  const { width, height, data } = logLuminance;
  const first = Math.ceil(topMm * pxPerMm);
  const end = Math.min(height, Math.floor(bottomMm * pxPerMm));
  const rows = data.subarray(first * width, end * width);
  const plane = { width, height: end - first, data: rows };
  const reachAMm = topMm - first / pxPerMm;
  const strip = { plane, pxPerMm, reachAMm, reachBMm: end / pxPerMm - topMm };
  const frame = edgeFrame(topMm, lengthMm);
  const labPxPerMm = pxPerMm / lab.reduceBy;
  const [lightness, a, b] = [lab.lightness, lab.a, lab.b].map((colour) =>
    seamStrip(colour, labPxPerMm, frame, labPxPerMm, 0, bottomMm - topMm),
  );
  return { frame, strip, blocks: carriedBlocks(plane, pxPerMm), lab: [lightness, a, b] };
}

/** The same wood with eta counted from a line further down. */
function seenFrom(wood: SeamWood, downMm: number): SeamWood {
  const lowered = (strip: SeamStrip): SeamStrip => ({
    ...strip,
    reachAMm: strip.reachAMm + downMm,
    reachBMm: strip.reachBMm - downMm,
  });
  const [lightness, a, b] = wood.lab.map(lowered);
  const frame = edgeFrame(wood.frame.originYMm + downMm, wood.frame.lengthMm);
  return { ...wood, frame, strip: lowered(wood.strip), lab: [lightness, a, b] };
}

function edgeFrame(yMm: number, lengthMm: number): SeamFrame {
  return { kind: 'rip', originXMm: 0, originYMm: yMm, ex: 1, ey: 0, nx: 0, ny: 1, lengthMm };
}
