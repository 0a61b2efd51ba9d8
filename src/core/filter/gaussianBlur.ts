import type { Plane } from '../image/plane.js';
import { convolveSeparable } from './convolveSeparable.js';
import { gaussianKernel } from './gaussianKernel.js';

/**
 * Gaussian smoothing with mirrored borders.
 *
 * @param source plane to smooth.
 * @param sigmaPx standard deviation along both axes, px, above 0.
 * @param into receives the result, default a new plane; may be `source`.
 * @returns `into`.
 */
export function gaussianBlur(source: Plane, sigmaPx: number, into?: Plane): Plane {
  const kernel = gaussianKernel(sigmaPx);
  return convolveSeparable(source, kernel, kernel, into);
}
