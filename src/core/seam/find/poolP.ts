/**
 * Chance that one of `tries` lines reaches `value`, by a pool of lines that are no joint: the share
 * of the pool that does, 1 - (1 - b / n)^tries. A pool with none above says nothing more than the
 * law of the evidence itself (`boardP`): 0.
 *
 * @returns 1 when the pool is too small (fewer than 8 lines) to say anything.
 */
export function poolP(
  pool: readonly { readonly value: number }[],
  value: number,
  tries: number,
): number {
  if (pool.length < 8) return 1;
  const above = pool.filter((line) => line.value >= value).length;
  return -Math.expm1(tries * Math.log1p(-Math.min(0.999999, above / pool.length)));
}
