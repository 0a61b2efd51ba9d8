import type { FittedRings } from './fitRings.js';
import { acrossRings, pithOf } from './ringFamily.js';

/** How the rings run at one place: the circle and what the wood strays from it. */
export interface RingDirection {
  /** Direction across the rings, rad. */
  readonly acrossRad: number;
  readonly seRad: number;
}

/** Rings nearer to the pith than this are no circles, mm. */
const roundFromMm = 1.5;
/** What is left of the error when all is well: lens, squaring up, rad (0.3 deg, assumption). */
const leastSeRad = 0.005;

/** Direction across the rings at a place of the end. */
export function ringDirection(rings: FittedRings, xMm: number, yMm: number): RingDirection {
  const [vx, vy] = acrossRings(rings.family, xMm, yMm);
  const stray = rings.strayAt(xMm, yMm);
  const pith = pithOf(rings.family);
  const nearRad = Math.atan(roundFromMm / (Math.hypot(xMm - pith.xMm, yMm - pith.yMm) + 1e-9));
  // Close to the pith a stray of the fitted kind would turn more than the circle itself.
  const strayRad = nearRad > 0.3 ? 0 : stray.rad;
  return {
    acrossRad: Math.atan2(vy, vx) + strayRad,
    seRad: Math.hypot(stray.seRad, leastSeRad, nearRad > 0.05 ? nearRad / 2 : 0),
  };
}

/** Ring line against the picture's horizontal, unsigned, 0 to 90 deg. */
export const angleToFaceDeg = (acrossRad: number): number =>
  (Math.atan2(Math.abs(Math.cos(acrossRad)), Math.abs(Math.sin(acrossRad))) * 180) / Math.PI;
