import type { EndgrainResult } from '../results/endgrainResult.js';
import type { FaceRings } from '../results/faceRings.js';
import type { RingProfile } from './ringsAtFront.js';

/** Ring angles over a board's width with their errors, and where they were seen. */
export interface KnownRings {
  readonly by: 'end' | 'face';
  readonly profile: readonly {
    readonly xMm: number;
    readonly angleDeg: number;
    readonly seDeg: number;
  }[];
  /** The width that x runs over. */
  readonly widthMm: number;
}

/**
 * The rings of a board: as its end shows them, else as its face tells them where a front would be
 * cut.
 *
 * @returns null where neither tells, or where the face leaves a strip of that place untold.
 */
export function knownRings(
  end: EndgrainResult | null,
  faceRings: FaceRings | null,
  faceHeightMm: number,
  at: { readonly yMm: number; readonly heightMm: number },
): KnownRings | null {
  if (end && end.ringAngle.length > 0)
    return { by: 'end', profile: end.ringAngle, widthMm: end.panel.widthMm };
  const strips = faceRings?.ringAngle ?? [];
  const there = strips.filter(({ yMm }) => yMm >= at.yMm && yMm <= at.yMm + at.heightMm);
  if (there.length === 0 || there.some(({ angleDeg }) => angleDeg === null)) return null;
  const profile = there.flatMap(({ yMm, angleDeg, seDeg }) =>
    angleDeg === null ? [] : [{ xMm: yMm, angleDeg, seDeg }],
  );
  return { by: 'face', profile, widthMm: faceHeightMm };
}

/** The same rings, all of them so many standard errors steeper to the face. */
export function steeperBy(profile: KnownRings['profile'], errors: number): RingProfile {
  return profile.map(({ xMm, angleDeg, seDeg }) => ({
    xMm,
    angleDeg: Math.min(90, Math.max(0, angleDeg + errors * seDeg)),
  }));
}
