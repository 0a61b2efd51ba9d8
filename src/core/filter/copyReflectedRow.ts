import { reflectIndex } from './reflectIndex.js';

/**
 * Copies one row into the middle of a buffer and mirrors its ends outward.
 *
 * @param source pixels; the row starts at `start` and has `width` of them.
 * @param padded receives width + 2 radiusPx values.
 */
export function copyReflectedRow(
  source: Float32Array,
  start: number,
  width: number,
  radiusPx: number,
  padded: Float32Array,
): void {
  padded.set(source.subarray(start, start + width), radiusPx);
  for (let i = 0; i < radiusPx; i++) {
    padded[i] = source[start + reflectIndex(i - radiusPx, width)];
    padded[radiusPx + width + i] = source[start + reflectIndex(width + i, width)];
  }
}
