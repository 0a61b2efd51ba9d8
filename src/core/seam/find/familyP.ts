import { tailScale } from './tailScale.js';

/** Never say never: the smallest chance that a few hundred lines of one board can vouch for. */
const leastP = 1e-6;

/**
 * Chance that the strongest of `tries` lines reaches `value` when each behaves like `pool`:
 * p1 = exp(-(value - median) / tail) / 2 (see `tailScale`); p = 1 - (1 - p1)^tries.
 *
 * @returns 1 when the pool is too small (fewer than 8 lines) to say anything.
 */
export function familyP(pool: readonly number[], value: number, tries: number): number {
  if (pool.length < 8) return 1;
  const { median, tail } = tailScale(pool);
  const single = Math.min(0.999999, 0.5 * Math.exp(-(value - median) / tail));
  return Math.max(leastP, -Math.expm1(tries * Math.log1p(-single)));
}
