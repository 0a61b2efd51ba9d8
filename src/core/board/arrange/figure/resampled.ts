/**
 * Means over stretches of 1 mm; NaN entries are left out, a stretch with none is NaN.
 *
 * @param values one per stepMm. @param count stretches; beyond the end the last value holds.
 */
export function resampled(values: Float64Array, stepMm: number, count: number): Float64Array {
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const from = Math.floor(i / stepMm);
    const to = Math.max(from + 1, Math.ceil((i + 1) / stepMm - 1e-9));
    let sum = 0;
    let told = 0;
    for (let k = from; k < to; k++) {
      const value = values[Math.min(values.length - 1, k)];
      if (Number.isNaN(value)) continue;
      sum += value;
      told++;
    }
    out[i] = told > 0 ? sum / told : Number.NaN;
  }
  return out;
}
