/**
 * A row of values weighted by an even kernel about each place: sum of kernel[d] x[i + d]; what lies
 * beyond the ends counts for nothing.
 *
 * @param kernel 2 r + 1 weights, the middle one at index r, the same on either side of it.
 */
export function smoothedRow(values: Float64Array, kernel: Float64Array): Float64Array {
  const n = values.length;
  const r = (kernel.length - 1) / 2;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = kernel[r] * values[i];
    if (i >= r && i + r < n) {
      for (let d = 1; d <= r; d++) sum += kernel[r + d] * (values[i - d] + values[i + d]);
    } else {
      for (let d = Math.max(-r, -i); d < 0; d++) sum += kernel[r + d] * values[i + d];
      for (let d = Math.min(r, n - 1 - i); d > 0; d--) sum += kernel[r + d] * values[i + d];
    }
    out[i] = sum;
  }
  return out;
}
