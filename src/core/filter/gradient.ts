import type { Plane } from '../image/plane.js';
import { convolveSeparable } from './convolveSeparable.js';
import { gaussianDerivativeKernel } from './gaussianDerivativeKernel.js';
import { gaussianKernel } from './gaussianKernel.js';

/** Slope of a plane per pixel: x to the right, y downward. */
export interface Gradient {
  readonly x: Plane;
  readonly y: Plane;
}

/**
 * Gradient by derivatives of a Gaussian; points across the grain wherever there are lines.
 *
 * @param source plane, for instance luminance.
 * @param sigmaPx scale of the derivative, px, default 1.
 * @returns two planes of the same size.
 */
export function gradient(source: Plane, sigmaPx = 1): Gradient {
  const smooth = gaussianKernel(sigmaPx);
  const slope = gaussianDerivativeKernel(sigmaPx);
  return {
    x: convolveSeparable(source, slope, smooth),
    y: convolveSeparable(source, smooth, slope),
  };
}
