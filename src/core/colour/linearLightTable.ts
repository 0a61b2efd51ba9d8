import { linearLight } from './linearLight.js';

/**
 * Linear light of all 256 levels times `scale`, for loops over pixels.
 *
 * @param scale factor on every entry, default 1.
 * @returns 256 entries, 0 to `scale`.
 */
export function linearLightTable(scale = 1): Float32Array {
  return Float32Array.from({ length: 256 }, (_, level) => scale * linearLight(level));
}
