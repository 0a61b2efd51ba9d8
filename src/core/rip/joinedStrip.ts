import type { SeamStrip } from '../seam/seamStrip.js';

/** As far as a thin line along a joint is looked for, with a little to spare, mm. */
const besideMm = 2;

/**
 * The picture of a joint that would be: the rows of side A down to its edge, right below them the
 * rows of side B from its edge on, the joint at eta = 0. Side A moved by slideMm.
 */
export function joinedStrip(
  { plane, pxPerMm, reachAMm }: SeamStrip,
  etaAMm: number,
  etaBMm: number,
  slideMm: number,
): SeamStrip {
  const { width, height, data } = plane;
  const rows = Math.ceil(besideMm * pxPerMm);
  const rowOf = (etaMm: number) => Math.round((etaMm + reachAMm) * pxPerMm);
  const by = Math.round(slideMm * pxPerMm);
  const joined = new Float32Array(2 * rows * width);
  const copy = (to: number, from: number, slid: number) => {
    const row = Math.min(height - 1, Math.max(0, from)) * width;
    for (let x = 0; x < width; x++) {
      joined[to * width + x] = data[row + Math.min(width - 1, Math.max(0, x - slid))];
    }
  };
  for (let k = 0; k < rows; k++) {
    copy(k, rowOf(etaAMm) - rows + k, by);
    copy(rows + k, rowOf(etaBMm) + k, 0);
  }
  const reach = rows / pxPerMm;
  return {
    plane: { width, height: 2 * rows, data: joined },
    ...{ pxPerMm, reachAMm: reach, reachBMm: reach },
  };
}
