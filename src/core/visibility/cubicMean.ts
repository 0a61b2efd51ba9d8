/**
 * Pools the stretches of one joint: (mean V^3)^(1/3).
 *
 * @param values stretches, times over just visible; null or NaN (untold) is left out.
 * @returns pooled value; null when nothing is told.
 */
export function cubicMean(values: Iterable<number | null>): number | null {
  let sum = 0;
  let count = 0;
  for (const value of values) {
    if (value === null || Number.isNaN(value)) continue;
    sum += Math.abs(value) ** 3;
    count++;
  }
  return count > 0 ? Math.cbrt(sum / count) : null;
}
