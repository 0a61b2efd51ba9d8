import type { Plane } from './plane.js';

/**
 * Overwrites a frame of `borderPx` pixels with the nearest pixel inside it, in place: the cut edge
 * of a rectified photo carries slivers of bench and arris that are no wood.
 *
 * @param topPx the same above and below, where it differs.
 */
export function replicateBorder(plane: Plane, borderPx: number, topPx = borderPx): Plane {
  const { width, height, data } = plane;
  const left = Math.min(borderPx, (width - 1) >> 1);
  const top = Math.min(topPx, (height - 1) >> 1);
  for (let y = top; y < height - top; y++) {
    const row = y * width;
    data.fill(data[row + left], row, row + left);
    data.fill(data[row + width - 1 - left], row + width - left, row + width);
  }
  for (let y = 0; y < top; y++) {
    data.copyWithin(y * width, top * width, (top + 1) * width);
    const inner = (height - 1 - top) * width;
    data.copyWithin((height - 1 - y) * width, inner, inner + width);
  }
  return plane;
}
