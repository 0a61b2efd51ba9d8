import type { CutEstimate, CutShares } from '../results/compareResult.js';
import { sharesOfAngles } from './sharesOfAngles.js';

/** A ring angle to the face at one of places that stand evenly over the width; null: untold. */
export interface RingAngleSe {
  readonly angleDeg: number | null;
  readonly seDeg: number;
}

const names = ['flatsawn', 'rift', 'quartered'] as const;
/** Less than this told over the width, and it is no estimate of the board. */
const leastTold = 0.5;
const shifts = [-1, -0.5, 0, 0.5, 1];

/**
 * How much of a board's width is sawn which way, from ring angles with their errors.
 *
 * Angles of one board rest on one reading of its pith, so they err together: least and most are
 * over all of them one standard error flatter to one standard error steeper, and an untold place
 * may be of any cut. Classes as `sharesOfAngles` has them.
 *
 * @returns null where less than half of the width is told.
 */
export function cutShares(places: readonly RingAngleSe[]): CutEstimate | null {
  const told = places.flatMap(({ angleDeg, seDeg }) =>
    angleDeg === null ? [] : [{ angleDeg, seDeg }],
  );
  if (told.length === 0 || told.length < leastTold * places.length) return null;
  const untold = 1 - told.length / places.length;
  const tried = shifts.map((shift) =>
    sharesOfAngles(told.map(({ angleDeg, seDeg }) => Math.abs(angleDeg + shift * seDeg))),
  );
  const each = (of: (name: keyof CutShares) => number) =>
    Object.fromEntries(names.map((name) => [name, of(name)])) as unknown as CutShares;
  return {
    cut: sharesOfAngles(told.map(({ angleDeg }) => angleDeg)),
    least: each((name) => (1 - untold) * Math.min(...tried.map((shares) => shares[name]))),
    most: each((name) => (1 - untold) * Math.max(...tried.map((shares) => shares[name])) + untold),
  };
}
