/** Never say never: the smallest chance that a few hundred lines of one board can vouch for. */
const leastP = 1e-6;

/** Chance that the best of `tries` lines with no joint shows this much evidence, each with exp(-evidence). */
export function familyP(evidence: number, tries: number): number {
  const single = Math.min(0.999999, Math.exp(-evidence));
  return Math.max(leastP, -Math.expm1(tries * Math.log1p(-single)));
}
