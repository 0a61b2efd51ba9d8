import type { Plane } from '../image/plane.js';
import { ridgeOfRows, rowSum } from '../seam/glueRidge.js';
import type { LineMeasures } from '../seam/lineMeasures.js';
import type { SeamStrip } from '../seam/seamStrip.js';

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
  const { width } = strip.plane;
  const rowOf = rowsBeside(strip, etaAMm, etaBMm);
  const by = Math.round(slideMm * strip.pxPerMm);
  const windows = line.windows.map((window, k) => {
    const from = Math.max(0, Math.round(k * stretchMm * strip.pxPerMm));
    const end = Math.round((k + 1) * stretchMm * strip.pxPerMm);
    const to = Math.min(width, Math.max(from + 1, end));
    const meanOfRow = (j: number) => {
      const { row, isUpper } = rowOf(j);
      const moved = isUpper ? by : 0;
      return clampedSum(strip.plane, row, from - moved, to - moved) / (to - from);
    };
    const rows = besideRows(strip.pxPerMm);
    return { ...window, ridge: ridgeOfRows(meanOfRow, 2 * rows, rows - 0.5, strip.pxPerMm) };
  });
  return { ...line, windows };
}

const besideRows = (pxPerMm: number) => Math.ceil(besideMm * pxPerMm);

/** Rows of the panel that come to lie beside the joint, the upper piece's first. */
function rowsBeside({ plane, pxPerMm, reachAMm }: SeamStrip, etaAMm: number, etaBMm: number) {
  const rows = besideRows(pxPerMm);
  const edge = (etaMm: number) => Math.round((etaMm + reachAMm) * pxPerMm);
  const [firstA, firstB] = [edge(etaAMm) - rows, edge(etaBMm)];
  return (j: number) => {
    const isUpper = j < rows;
    const wanted = isUpper ? firstA + j : firstB + j - rows;
    return { row: Math.min(plane.height - 1, Math.max(0, wanted)), isUpper };
  };
}

/** Sum of pixels from .. to - 1 of a row; beyond its ends its end values hold. */
function clampedSum(plane: Plane, row: number, from: number, to: number): number {
  const { width, data } = plane;
  const within = (x: number) => Math.min(width, Math.max(0, x));
  const before = Math.min(to, 0) - Math.min(from, 0);
  const after = Math.max(to, width) - Math.max(from, width);
  return (
    before * data[row * width] +
    rowSum(plane, row, within(from), within(to)) +
    after * data[row * width + width - 1]
  );
}
