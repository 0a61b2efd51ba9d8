import type { Plane } from '../image/plane.js';
import { convolveSeparable } from './convolveSeparable.js';
import { gaussianDerivativeKernel } from './gaussianDerivativeKernel.js';
import { gaussianKernel } from './gaussianKernel.js';

/** Slope of a plane per pixel, gx to the right and gy downward; index y * width + x. */
export interface GradientPlanes {
  readonly width: number;
  readonly height: number;
  readonly gx: Float32Array;
  readonly gy: Float32Array;
}

/**
 * Gradient by derivatives of a Gaussian; points across the grain wherever there are lines.
 *
 * @param source plane, for instance luminance.
 * @param sigmaPx scale of the derivative, px, default 1.
 * @returns two planes of the same size, per pixel.
 */
export function gaussianGradient(source: Plane, sigmaPx = 1): GradientPlanes {
  const smooth = gaussianKernel(sigmaPx);
  const slope = gaussianDerivativeKernel(sigmaPx);
  return {
    width: source.width,
    height: source.height,
    gx: convolveSeparable(source, slope, smooth).data,
    gy: convolveSeparable(source, smooth, slope).data,
  };
}
