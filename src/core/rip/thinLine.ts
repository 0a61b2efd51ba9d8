import { glueRidge } from '../seam/glueRidge.js';
import type { LineMeasures } from '../seam/lineMeasures.js';
import type { SeamStrip } from '../seam/seamStrip.js';
import { joinedRows } from './joinedWood.js';

/** As far as a thin line along a joint is looked for, with a little to spare, mm. */
const besideMm = 2;

/**
 * The measures of a joint that would be, with the thin line along it that a score would read from
 * the picture put together: half a ring line that the cut left.
 *
 * @param strip the whole panel. @param slideMm how far side A is moved.
 */
export function withThinLine(
  line: LineMeasures,
  strip: SeamStrip,
  etaAMm: number,
  etaBMm: number,
  slideMm: number,
): LineMeasures {
  const stretchMm = (line.u.length * line.profileA.stepMm) / line.windows.length;
  const picture = pictureOf(strip, etaAMm, etaBMm, slideMm);
  const windows = line.windows.map((window, k) => ({
    ...window,
    ridge: glueRidge(picture, 0, k * stretchMm, (k + 1) * stretchMm),
  }));
  return { ...line, windows };
}

function pictureOf(
  { plane, pxPerMm, reachAMm }: SeamStrip,
  etaAMm: number,
  etaBMm: number,
  slideMm: number,
): SeamStrip {
  const rows = Math.ceil(besideMm * pxPerMm);
  const edge = (etaMm: number) => Math.round((etaMm + reachAMm) * pxPerMm);
  const joined = joinedRows(plane, edge(etaAMm) - rows, rows, edge(etaBMm), rows);
  const by = Math.round(slideMm * pxPerMm);
  if (by !== 0) slideRows(joined, rows, by);
  return { plane: joined, pxPerMm, reachAMm: rows / pxPerMm, reachBMm: rows / pxPerMm };
}

/** Moves the upper rows, in place; what comes in from beyond the end is the end's own. */
function slideRows(
  { width, data }: { readonly width: number; readonly data: Float32Array },
  rows: number,
  by: number,
): void {
  for (let k = 0; k < rows; k++) {
    const row = data.subarray(k * width, (k + 1) * width);
    const still = row.slice();
    for (let x = 0; x < width; x++) row[x] = still[Math.min(width - 1, Math.max(0, x - by))];
  }
}
