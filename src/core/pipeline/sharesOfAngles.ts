import type { CutShares } from '../results/compareResult.js';

/**
 * Shares of a board's width that are flatsawn (rings below 30 deg to the face), rift (30 to 60) and
 * quartered (from 60), from angles at places evenly over the width, deg. At least one.
 *
 * Source: Architectural Woodwork Standards, 1st ed. 2009, App. B.
 */
export function sharesOfAngles(anglesDeg: readonly number[]): CutShares {
  const share = (test: (deg: number) => boolean) =>
    anglesDeg.filter(test).length / anglesDeg.length;
  return {
    flatsawn: share((deg) => deg < 30),
    rift: share((deg) => deg >= 30 && deg < 60),
    quartered: share((deg) => deg >= 60),
  };
}
