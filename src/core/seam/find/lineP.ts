/**
 * Chance that one given line with no joint shows this much evidence, exp(-evidence), and no more than
 * 1 - exp(-1): one line is asked, not the best of a board.
 */
export function lineP(evidence: number): number {
  return -Math.expm1(-Math.exp(-evidence));
}
