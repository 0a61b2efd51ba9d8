import type { FaceRings } from '../results/faceRings.js';

/** Ring angle to the face at one height of it. */
export interface RingAngleAt {
  readonly angleDeg: number;
  readonly seDeg: number;
}

/**
 * The ring angle at a height of the face, between the middles of the two strips about it.
 *
 * @returns null where a strip that it lies between tells nothing; beyond the outermost strips their own.
 */
export function faceRingAngleAt({ ringAngle }: FaceRings, yMm: number): RingAngleAt | null {
  if (ringAngle.length === 0) return null;
  const below = ringAngle.findIndex((strip) => strip.yMm >= yMm);
  const lower = ringAngle[below < 0 ? ringAngle.length - 1 : below];
  const upper = ringAngle[below < 0 ? ringAngle.length - 1 : Math.max(0, below - 1)];
  if (lower.angleDeg === null || upper.angleDeg === null) return null;
  const way = lower.yMm - upper.yMm;
  const share = way > 0 ? (yMm - upper.yMm) / way : 0;
  return {
    angleDeg: upper.angleDeg + share * (lower.angleDeg - upper.angleDeg),
    seDeg: Math.max(upper.seDeg, lower.seDeg),
  };
}
