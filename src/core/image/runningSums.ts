import type { Plane } from './plane.js';

/**
 * Sums of all values above and to the left of every pixel corner, so that any upright rectangle is
 * summed from four of them.
 *
 * @returns (width + 1) x (height + 1) sums, the first row and column 0.
 */
export function runningSums({ width, height, data }: Plane): Float64Array {
  const stride = width + 1;
  const sums = new Float64Array(stride * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0, k = (y + 1) * stride + 1; x < width; x++, k++) {
      row += data[y * width + x];
      sums[k] = sums[k - stride] + row;
    }
  }
  return sums;
}

/** Sum over columns x0 .. x1 - 1 and rows y0 .. y1 - 1 of a plane so wide, from its `runningSums`. */
export function sumWithin(
  sums: Float64Array,
  width: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): number {
  const [upper, lower] = [y0 * (width + 1), y1 * (width + 1)];
  return sums[lower + x1] - sums[lower + x0] - sums[upper + x1] + sums[upper + x0];
}
