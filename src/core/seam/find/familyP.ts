import { tailScale } from './tailScale.js';

/** Never say never: the smallest chance that a few hundred lines of one board can vouch for. */
const leastP = 1e-6;

/**
 * Chance that the strongest of `tries` lines reaches `value` when each behaves like `pool`:
 * p = 1 - F(value)^tries, F the Gumbel law of the pool (see `tailScale`).
 *
 * @returns 1 when the pool is too small (fewer than 8 lines) to say anything.
 */
export function familyP(pool: readonly number[], value: number, tries: number): number {
  if (pool.length < 8) return 1;
  const { location, scale } = tailScale(pool);
  return Math.max(leastP, -Math.expm1(-tries * Math.exp(-(value - location) / scale)));
}
