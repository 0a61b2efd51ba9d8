import { createPlane, type Plane } from '../image/plane.js';
import { convolveSeparable } from './convolveSeparable.js';
import { gaussianKernel } from './gaussianKernel.js';
import { smoothNarrow } from './smoothNarrow.js';

/**
 * Gaussian smoothing with mirrored borders.
 *
 * @param source plane to smooth.
 * @param sigmaPx standard deviation along both axes, px, above 0.
 * @param into receives the result, default a new plane; may be `source`.
 * @returns `into`.
 */
export function gaussianBlur(
  source: Plane,
  sigmaPx: number,
  into: Plane = createPlane(source.width, source.height),
): Plane {
  const kernel = gaussianKernel(sigmaPx);
  const radius = (kernel.length - 1) / 2;
  if (radius > 6) return convolveSeparable(source, kernel, kernel, into);
  const weights = new Float64Array(7);
  weights.set(kernel.subarray(radius));
  return smoothNarrow(source, weights, into);
}
