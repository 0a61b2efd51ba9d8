import type { Plane } from '../image/plane.js';
import { gradientRows } from './gradientRows.js';

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
  const { width, height } = source;
  const gx = new Float32Array(width * height);
  const gy = new Float32Array(width * height);
  gradientRows(source, sigmaPx, (y, rowX, rowY) => {
    gx.set(rowX, y * width);
    gy.set(rowY, y * width);
  });
  return { width, height, gx, gy };
}
