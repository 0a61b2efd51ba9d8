import type { Plane } from '../../image/plane.js';

const nearMm = 0.7;
const farMm = 1.7;

/**
 * A thin dark or bright line along x: how far each row lies outside both neighbours.
 *
 * With m the row's mean (1-2-1 over rows) and a, b the means 0.7 to 1.7 mm above and below:
 * d = m - min(a, b) when darker than both, m - max(a, b) when brighter than both, else 0; so a
 * step of colour is no line. Given as sign(d) sqrt|d|: what keeps up over the whole length counts
 * more than one dark knot.
 *
 * @param means log luminance averaged along columns (`columnMeans`).
 */
export function ridgeMap(means: Plane, rowsPerMm: number): Float32Array {
  const { width, height, data } = means;
  const out = new Float32Array(width * height);
  const near = Math.max(2, Math.round(nearMm * rowsPerMm));
  const far = Math.max(near + 1, Math.round(farMm * rowsPerMm));
  const n = far - near + 1;
  for (let y = far; y < height - far; y++) {
    for (let c = 0; c < width; c++) {
      const i = y * width + c;
      let above = 0;
      let below = 0;
      for (let k = near; k <= far; k++) {
        above += data[i - k * width];
        below += data[i + k * width];
      }
      const middle = (data[i - width] + 2 * data[i] + data[i + width]) / 4;
      const low = Math.min(above, below) / n;
      const high = Math.max(above, below) / n;
      out[i] = middle < low ? middle - low : middle > high ? middle - high : 0;
      out[i] = Math.sign(out[i]) * Math.sqrt(Math.abs(out[i]));
    }
  }
  return out;
}
