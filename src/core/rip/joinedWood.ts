import { createPlane, type Plane } from '../image/plane.js';
import { blockRowsPx } from '../seam/carriedBlocks.js';
import type { SeamStrip } from '../seam/seamStrip.js';
import { type SeamWood, sideBlocks } from '../seam/seamWood.js';

/** Closer to a pixel's middle than this is on it. */
const wholePx = 1e-6;
/** As far as a score reads the boards beside a joint (`seamWood`), mm. */
const farthestMm = 32;

/**
 * The wood of a joint that would be, as a score of the re-joined panel takes it: the strip between
 * the edges gone, what is left pushed together at eta = 0, each piece's grain read from that piece
 * alone.
 *
 * @param wood the whole panel, eta from its edge. @param etaAMm, etaBMm where the pieces end.
 */
export function joinedWood(wood: SeamWood, etaAMm: number, etaBMm: number): SeamWood {
  const { plane, pxPerMm, reachAMm } = wood.strip;
  const unit = blockRowsPx(pxPerMm);
  const whole = (mm: number) =>
    (unit * Math.max(1, Math.floor((Math.min(mm, farthestMm) * pxPerMm) / unit))) / pxPerMm;
  const deepAMm = whole(etaAMm + reachAMm);
  const deepBMm = whole(plane.height / pxPerMm - reachAMm - etaBMm);
  // The whole cut may lie half a pixel off; then only side B is read between rows, which blurs.
  const shiftMm = Math.round((etaAMm + reachAMm) * pxPerMm) / pxPerMm - (etaAMm + reachAMm);
  const [edgeAMm, edgeBMm] = [etaAMm + shiftMm, etaBMm + shiftMm];
  const joined = (from: SeamStrip) => joinedStrip(from, edgeAMm, edgeBMm, deepAMm, deepBMm);
  const strip = joined(wood.strip);
  const [lightness, a, b] = wood.lab.map(joined);
  return { frame: wood.frame, strip, blocks: sideBlocks(strip), lab: [lightness, a, b] };
}

function stripOf(plane: Plane, pxPerMm: number, rowsA: number): SeamStrip {
  const reachBMm = (plane.height - rowsA) / pxPerMm;
  return { plane, pxPerMm, reachAMm: rowsA / pxPerMm, reachBMm };
}

/**
 * Rows up to etaA, and right below them those from etaB on; beyond the panel its last row. Between rows
 * is read in straight lines: a kerf taken to the nearest pixel moves lines that cross at 8 degrees by a
 * millimetre.
 */
function joinedStrip(
  { plane, pxPerMm, reachAMm }: SeamStrip,
  etaAMm: number,
  etaBMm: number,
  deepAMm: number,
  deepBMm: number,
): SeamStrip {
  const { width, height, data } = plane;
  const [rowsA, rowsB] = [Math.round(deepAMm * pxPerMm), Math.round(deepBMm * pxPerMm)];
  const out = createPlane(width, rowsA + rowsB);
  for (let k = 0; k < rowsA + rowsB; k++) {
    const etaMm = (k < rowsA ? etaAMm : etaBMm) + (k + 0.5 - rowsA) / pxPerMm;
    const y = Math.min(height - 1, Math.max(0, (etaMm + reachAMm) * pxPerMm - 0.5));
    const upper = Math.floor(y + wholePx);
    const upperRow = data.subarray(upper * width, (upper + 1) * width);
    if (y - upper < wholePx) {
      out.data.set(upperRow, k * width);
      continue;
    }
    const lower = Math.min(height - 1, upper + 1) * width;
    for (let x = 0; x < width; x++) {
      const from = upperRow[x];
      out.data[k * width + x] = from + (y - upper) * (data[lower + x] - from);
    }
  }
  return stripOf(out, pxPerMm, rowsA);
}
