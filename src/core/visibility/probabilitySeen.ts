/**
 * Chance that an observer sees the joint: 1 - 2^(-V^3), one half at V = 1.
 *
 * @param v visibility, times over just visible, 0 or more.
 */
export function probabilitySeen(v: number): number {
  return 1 - 2 ** -(v ** 3);
}
