import { defaultCarryReach, fadingShare } from './carriedProfile.js';

/** Ways fade as exp(-way / fadingMm) in a carried profile. */
const fadingMm = fadingShare * defaultCarryReach.wayMm;

/**
 * How far lines that run through a joint seem to part because their directions are only known so
 * well: |A - B| / (|A| + |B|), rms.
 *
 * Carried over a way w in a direction that is e off, a line s apart from the next is out of phase by
 * phi = 2 pi w e / s, and |A - B| / (|A| + |B|) = |sin(phi / 2)|; over e of rms seRad that is
 * sqrt((1 - exp(-phi^2 / 2)) / 2). w is the mean way of a carried profile: wood 0.5 to 2.2 mm deep,
 * at most 26 mm along the grain, the farther the less it counts.
 *
 * @param angleRad grain against the joint. @param seRad standard error of the directions, both
 *   sides together.
 * @returns 0 to 0.71 for lines so many to the mm across the grain.
 */
export function carryErrors(angleRad: number, seRad: number): (frequencyPerMm: number) => number {
  const phaseMm = 2 * Math.PI * meanWayMm(angleRad) * seRad;
  return (frequencyPerMm) => Math.sqrt(-Math.expm1(-((phaseMm * frequencyPerMm) ** 2) / 2) / 2);
}

/** Mean of the ways into the board, weighed as they fade. */
function meanWayMm(angleRad: number): number {
  const { nearMm, farMm, wayMm } = defaultCarryReach;
  const sin = Math.abs(Math.sin(angleRad));
  if (nearMm >= sin * wayMm) return wayMm;
  const [near, far] = [nearMm / sin, Math.min(farMm / sin, wayMm)];
  const [fromNear, fromFar] = [Math.exp(-near / fadingMm), Math.exp(-far / fadingMm)];
  return fadingMm + (near * fromNear - far * fromFar) / (fromNear - fromFar);
}
