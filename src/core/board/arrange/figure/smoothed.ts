import { gaussianKernel } from '../../../filter/gaussianKernel.js';

/** Gaussian mean along a row of values; NaN entries are left out and stay NaN. */
export function smoothed(values: Float64Array, sigma: number): Float64Array {
  const kernel = gaussianKernel(sigma);
  const radius = (kernel.length - 1) / 2;
  const isWhole = !values.some(Number.isNaN);
  return values.map((own, i) => {
    if (isWhole && i >= radius && i + radius < values.length) {
      // The kernel sums to 1 and is even.
      let inner = kernel[radius] * own;
      for (let d = 1; d <= radius; d++)
        inner += kernel[d + radius] * (values[i - d] + values[i + d]);
      return inner;
    }
    if (Number.isNaN(own)) return Number.NaN;
    let sum = 0;
    let weight = 0;
    for (let d = Math.max(-radius, -i); d <= Math.min(radius, values.length - 1 - i); d++) {
      const value = values[i + d];
      if (Number.isNaN(value)) continue;
      sum += kernel[d + radius] * value;
      weight += kernel[d + radius];
    }
    return sum / weight;
  });
}
