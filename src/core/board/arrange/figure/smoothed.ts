import { gaussianKernel } from '../../../filter/gaussianKernel.js';
import { smoothedRow } from '../../../filter/smoothedRow.js';

/** Gaussian mean along a row of values; NaN entries are left out and stay NaN. */
export function smoothed(values: Float64Array, sigma: number): Float64Array {
  const kernel = gaussianKernel(sigma);
  if (!values.some(Number.isNaN)) {
    const sums = smoothedRow(values, kernel);
    return sums.map((sum, i) => sum / weightWithin(kernel, i, values.length));
  }
  const told = values.map((value) => (Number.isNaN(value) ? 0 : 1));
  const sums = smoothedRow(
    values.map((value) => (Number.isNaN(value) ? 0 : value)),
    kernel,
  );
  const weights = smoothedRow(told, kernel);
  return values.map((value, i) => (Number.isNaN(value) ? value : sums[i] / weights[i]));
}

/** Sum of the weights about place i that lie within the row; all of them sum to 1. */
function weightWithin(kernel: Float64Array, i: number, length: number): number {
  const r = (kernel.length - 1) / 2;
  if (i >= r && i + r < length) return 1;
  let weight = 0;
  for (let d = Math.max(-r, -i); d <= Math.min(r, length - 1 - i); d++) weight += kernel[d + r];
  return weight;
}
