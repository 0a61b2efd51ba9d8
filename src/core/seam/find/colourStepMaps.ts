import type { Plane } from '../../image/plane.js';
import type { PanelPlanes } from '../seamWood.js';

/** Bands compared on each side of a candidate, and the strip left out at it, mm. */
const bandMm = 6;
const clearMm = 0.8;

/**
 * Signed steps of L*, a* and b* across every row, band against band, in the finder's cells; given
 * as sign(d) sqrt|d|, so that a step over the whole length counts more than one broad dark ring.
 * Index column * rows + row.
 *
 * @param columns, columnMm, rows, rowsPerMm the cells to fill.
 */
export function colourStepMaps(
  planes: PanelPlanes,
  columns: number,
  columnMm: number,
  rows: number,
  rowsPerMm: number,
): [Float32Array, Float32Array, Float32Array] {
  const patchMm = planes.lab.reduceBy / planes.pxPerMm;
  const step = (plane: Plane) => stepMap(plane, patchMm, columns, columnMm, rows, rowsPerMm);
  return [step(planes.lab.lightness), step(planes.lab.a), step(planes.lab.b)];
}

function stepMap(
  plane: Plane,
  patchMm: number,
  columns: number,
  columnMm: number,
  rows: number,
  rowsPerMm: number,
): Float32Array {
  const { width, height, data } = plane;
  const out = new Float32Array(columns * rows);
  const band = Math.max(1, Math.round(bandMm / patchMm));
  const clear = Math.max(1, Math.round(clearMm / patchMm));
  const sums = new Float64Array(height + 1);
  for (let c = 0; c < columns; c++) {
    const from = Math.min(width - 1, Math.round((c * columnMm) / patchMm));
    const to = Math.max(from + 1, Math.min(width, Math.round(((c + 1) * columnMm) / patchMm)));
    for (let y = 0; y < height; y++) {
      let sum = 0;
      for (let x = from; x < to; x++) sum += data[y * width + x];
      sums[y + 1] = sums[y] + sum / (to - from);
    }
    for (let row = 0; row < rows; row++) {
      const at = (row + 0.5) / rowsPerMm / patchMm;
      const below = Math.round(at + clear - 0.5);
      const above = Math.round(at - clear + 0.5);
      const belowEnd = Math.min(height, below + band);
      const aboveStart = Math.max(0, above - band);
      if (belowEnd - below < band / 2 || above - aboveStart < band / 2) continue;
      const step =
        (sums[belowEnd] - sums[below]) / (belowEnd - below) -
        (sums[above] - sums[aboveStart]) / (above - aboveStart);
      out[c * rows + row] = Math.sign(step) * Math.sqrt(Math.abs(step));
    }
  }
  return out;
}
