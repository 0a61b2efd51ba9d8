import { createPlane, type Plane } from '../image/plane.js';
import { copyReflectedRow } from './copyReflectedRow.js';
import { reflectIndex } from './reflectIndex.js';

/**
 * Mean over a (2 radiusX + 1) x (2 radiusY + 1) window by running sums: the cost does not
 * depend on the window. Mirrored borders.
 *
 * @param source plane to smooth.
 * @param radiusXPx whole pixels to the left and right, 0 or more.
 * @param radiusYPx whole pixels above and below, default radiusXPx.
 * @param into receives the result, default a new plane; must not be `source`.
 * @returns `into`.
 */
export function boxMean(
  source: Plane,
  radiusXPx: number,
  radiusYPx = radiusXPx,
  into: Plane = createPlane(source.width, source.height),
): Plane {
  const { width, height } = source;
  const rows = rowMeans(source, radiusXPx);
  const sums = new Float64Array(width);
  for (let row = -radiusYPx; row <= radiusYPx; row++) {
    addRow(sums, rows, reflectIndex(row, height) * width, 1);
  }
  const scale = 1 / (2 * radiusYPx + 1);
  for (let y = 0; y < height; y++) {
    for (let x = 0, i = y * width; x < width; x++, i++) into.data[i] = sums[x] * scale;
    addRow(sums, rows, reflectIndex(y + radiusYPx + 1, height) * width, 1);
    addRow(sums, rows, reflectIndex(y - radiusYPx, height) * width, -1);
  }
  return into;
}

function addRow(sums: Float64Array, rows: Float32Array, start: number, sign: number): void {
  for (let x = 0; x < sums.length; x++) sums[x] += sign * rows[start + x];
}

function rowMeans(source: Plane, radiusPx: number): Float32Array {
  const { width, height } = source;
  const out = new Float32Array(width * height);
  const padded = new Float32Array(width + 2 * radiusPx);
  const scale = 1 / (2 * radiusPx + 1);
  for (let start = 0; start < out.length; start += width) {
    copyReflectedRow(source.data, start, width, radiusPx, padded);
    let sum = 0;
    for (let i = 0; i < 2 * radiusPx; i++) sum += padded[i];
    for (let x = 0; x < width; x++) {
      sum += padded[x + 2 * radiusPx];
      out[start + x] = sum * scale;
      sum -= padded[x];
    }
  }
  return out;
}
