import { tailScale } from './tailScale.js';

/**
 * Chance that one of `tries` lines of a pool reaches `value`: the share of the pool that does,
 * (b + 1) / (n + 1), or what the pool's exponential tail says beyond its largest member.
 *
 * @returns 1 when the pool is too small (fewer than 8 lines) to say anything.
 */
export function poolP(pool: readonly number[], value: number, tries: number): number {
  if (pool.length < 8) return 1;
  const above = pool.filter((x) => x >= value).length;
  const { median, tail } = tailScale(pool);
  const single =
    above > 0 ? above / pool.length : Math.min(1, 0.5 * Math.exp(-(value - median) / tail));
  return -Math.expm1(tries * Math.log1p(-Math.min(0.999999, single)));
}
