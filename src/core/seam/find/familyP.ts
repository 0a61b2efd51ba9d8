/** Never say never: the smallest chance that a few hundred lines of one board can vouch for. */
const leastP = 1e-6;

/**
 * Chance that the best of `tries` lines of a board with no seam shows this much evidence.
 *
 * Evidence S is a sum of `channels` surprises, each falling off as exp(-s) among the board's own
 * lines, so one line reaches S with the chance of a gamma variable of that order,
 * Q = exp(-S) sum S^j / j! over j < channels, and the best of many with 1 - (1 - Q)^tries.
 */
export function familyP(evidence: number, tries: number, channels: number): number {
  let term = 1;
  let sum = 1;
  for (let j = 1; j < channels; j++) {
    term *= evidence / j;
    sum += term;
  }
  const single = Math.min(0.999999, sum * Math.exp(-evidence));
  return Math.max(leastP, -Math.expm1(tries * Math.log1p(-single)));
}
