import { amongLinesFactor } from '../visibility/amongLinesFactor.js';
import { closedFormBreak } from '../visibility/closedFormBreak.js';
import { cubicMean } from '../visibility/cubicMean.js';
import { maskCue } from '../visibility/maskCue.js';
import type { LocalGrain } from './windowByAngle.js';

/**
 * How far a grain line moves on the face when the face is planed: t / tan(ring angle), across
 * the grain. Flatsawn lines race, quartered ones stay.
 *
 * @param depthMm t planed off, mm. @param ringAngleRad rings against the face, 0 flatsawn to
 *   pi/2 quartered.
 * @returns mm; infinite for rings that lie in the face.
 */
export function planingShiftMm(depthMm: number, ringAngleRad: number): number {
  return (depthMm * Math.cos(ringAngleRad)) / Math.sin(ringAngleRad);
}

/** Lines of one stretch with the rings' angle to the face there, and the board's own rms. */
export interface PlanedStretch {
  readonly grain: LocalGrain;
  readonly ringAngleRad: number;
  readonly ownRms: number;
}

/** Rings flatter than this (half a degree) lie in the face: every shaving changes it. */
export const flattestRad = 0.0087;
/** Visibility that still disappears. */
const disappears = 0.5;
/** More than this between front and panel is no longer planing, mm. */
const mostMm = 3;

/**
 * The largest difference of planing between two sides of a joint that still disappears: the
 * smallest t with V(t) = 0.5, lines shifted by t / tan(ring angle) and nothing else amiss.
 *
 * @returns mm; null when even 3 mm disappears.
 */
export function planingAllowanceMm(
  stretches: readonly PlanedStretch[],
  distanceMm: number,
): number | null {
  const v = (depthMm: number) => planedVisibility(stretches, depthMm, distanceMm);
  const steps = 600;
  let seen = 1;
  while (seen <= steps && v((mostMm * seen) / steps) < disappears) seen++;
  if (seen > steps) return null;
  let [low, high] = [(mostMm * (seen - 1)) / steps, (mostMm * seen) / steps];
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (v(middle) < disappears) low = middle;
    else high = middle;
  }
  return low;
}

/** Visibility of a joint whose sides were planed by amounts that differ by depthMm. */
export function planedVisibility(
  stretches: readonly PlanedStretch[],
  depthMm: number,
  distanceMm: number,
): number {
  const values = stretches.map(({ grain, ringAngleRad, ownRms }) => {
    const shift = planingShiftMm(depthMm, Math.max(flattestRad, ringAngleRad));
    // A shift across the grain, whichever way the joint runs: delta itself.
    const joint = {
      lostMm: shift * Math.cos(grain.angleRad),
      slideMm: -shift * Math.sin(grain.angleRad),
    };
    const parted = closedFormBreak({ ...grain, ...joint, distanceMm });
    return amongLinesFactor(grain.angleRad) * maskCue(parted, ownRms);
  });
  return cubicMean(values) ?? 0;
}
