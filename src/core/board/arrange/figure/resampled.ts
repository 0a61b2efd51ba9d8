/**
 * Means over so many equal stretches of a row; NaN entries are left out, a stretch with none is NaN.
 */
export function resampled(values: Float64Array, count: number): Float64Array {
  const out = new Float64Array(count);
  const each = values.length / count;
  for (let i = 0; i < count; i++) {
    const from = Math.floor(i * each + 1e-9);
    const to = Math.max(from + 1, Math.ceil((i + 1) * each - 1e-9));
    let sum = 0;
    let told = 0;
    for (let k = from; k < to; k++) {
      if (Number.isNaN(values[k])) continue;
      sum += values[k];
      told++;
    }
    out[i] = told > 0 ? sum / told : Number.NaN;
  }
  return out;
}
