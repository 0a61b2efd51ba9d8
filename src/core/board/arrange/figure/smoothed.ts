import { gaussianKernel } from '../../../filter/gaussianKernel.js';
import { smoothedRow } from '../../../filter/smoothedRow.js';

/** Gaussian mean along a row of values; NaN entries are left out and stay NaN. */
export function smoothed(values: Float64Array, sigma: number): Float64Array {
  const kernel = gaussianKernel(sigma);
  const told = values.map((value) => (Number.isNaN(value) ? 0 : 1));
  const sums = smoothedRow(
    values.map((value, i) => (told[i] ? value : 0)),
    kernel,
  );
  const weights = smoothedRow(told, kernel);
  return values.map((value, i) => (Number.isNaN(value) ? value : sums[i] / weights[i]));
}
