import { createPlane, type Plane } from '../image/plane.js';
import { copyReflectedRow } from './copyReflectedRow.js';
import { gaussianKernel } from './gaussianKernel.js';
import { sumShifted } from './sumShifted.js';

/**
 * Gaussian smoothing along x only; mirrored ends.
 *
 * @param sigmaPx standard deviation, px, above 0.
 * @returns a new plane of the same size.
 */
export function blurAlongRows({ width, height, data }: Plane, sigmaPx: number): Plane {
  const kernel = gaussianKernel(sigmaPx);
  const radius = (kernel.length - 1) / 2;
  const out = createPlane(width, height);
  const padded = new Float32Array(width + 2 * radius);
  const starts = Int32Array.from(kernel, (_, i) => i);
  for (let y = 0; y < height; y++) {
    copyReflectedRow(data, y * width, width, radius, padded);
    sumShifted(out.data, y * width, width, padded, starts, kernel);
  }
  return out;
}
