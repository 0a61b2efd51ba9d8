import type { Plane } from '../image/plane.js';
import { copyReflectedRow } from './copyReflectedRow.js';
import { gaussianDerivativeKernel } from './gaussianDerivativeKernel.js';
import { gaussianKernel } from './gaussianKernel.js';
import { reflectIndex } from './reflectIndex.js';
import { sumShifted } from './sumShifted.js';

/**
 * Hands out the Gaussian-derivative gradient row by row, so that nobody need keep whole planes.
 *
 * Memory: two rings of as many rows as the kernel has taps. Mirrored borders.
 *
 * @param source plane, for instance luminance.
 * @param sigmaPx scale of the derivative, px, above 0.
 * @param visit called once a row, from the top; gx and gy (per pixel) are reused, so copy what
 *   is to be kept.
 */
export function gradientRows(
  source: Plane,
  sigmaPx: number,
  visit: (y: number, gx: Float32Array, gy: Float32Array) => void,
): void {
  const { width, height, data } = source;
  const smooth = gaussianKernel(sigmaPx);
  const slope = gaussianDerivativeKernel(sigmaPx);
  const taps = smooth.length;
  const radius = (taps - 1) / 2;
  const padded = new Float32Array(width + 2 * radius);
  const smoothRing = new Float32Array(taps * width);
  const slopeRing = new Float32Array(taps * width);
  const alongRow = Int32Array.from(smooth, (_, i) => i);
  const downRows = new Int32Array(taps);
  const gx = new Float32Array(width);
  const gy = new Float32Array(width);
  let ready = 0;
  for (let y = 0; y < height; y++) {
    for (; ready <= Math.min(y + radius, height - 1); ready++) {
      const slot = (ready % taps) * width;
      copyReflectedRow(data, ready * width, width, radius, padded);
      sumShifted(smoothRing, slot, width, padded, alongRow, smooth);
      sumShifted(slopeRing, slot, width, padded, alongRow, slope);
    }
    for (let t = 0; t < taps; t++) {
      downRows[t] = (reflectIndex(y + t - radius, height) % taps) * width;
    }
    sumShifted(gx, 0, width, slopeRing, downRows, smooth);
    sumShifted(gy, 0, width, smoothRing, downRows, slope);
    visit(y, gx, gy);
  }
}
