/**
 * Sampled Gaussian weights with sum 1.
 *
 * @param sigmaPx standard deviation, px, above 0.
 * @param radiusPx taps on either side of the middle, default 4 sigma rounded.
 * @returns 2 radiusPx + 1 weights, the middle one at index radiusPx.
 */
export function gaussianKernel(
  sigmaPx: number,
  radiusPx = Math.max(1, Math.round(4 * sigmaPx)),
): Float64Array {
  const kernel = Float64Array.from({ length: 2 * radiusPx + 1 }, (_, i) =>
    Math.exp(-0.5 * ((i - radiusPx) / sigmaPx) ** 2),
  );
  const sum = kernel.reduce((total, weight) => total + weight, 0);
  return kernel.map((weight) => weight / sum);
}
