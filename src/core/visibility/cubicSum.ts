/**
 * Pools cues seen at one place: (sum V^3)^(1/3). The strongest rules, company helps a little.
 *
 * @param values cues, times over just visible; null or NaN (untold) is left out.
 * @returns pooled value; null when nothing is told.
 */
export function cubicSum(values: Iterable<number | null>): number | null {
  let sum = 0;
  let told = false;
  for (const value of values) {
    if (value === null || Number.isNaN(value)) continue;
    sum += Math.abs(value) ** 3;
    told = true;
  }
  return told ? Math.cbrt(sum) : null;
}
