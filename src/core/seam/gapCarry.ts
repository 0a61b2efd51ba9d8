import type { SideField } from './sideField.js';

/** Lines closer to the seam's own direction than this (0.7 deg) are carried no farther along. */
const leastSin = 0.0125;

/**
 * How far along the seam a grain line travels while it crosses a gap of lost wood:
 * C(xi; g) = integral over the gap of cot theta, the direction turning evenly from side A's to
 * side B's (double angles) on the way. Straight lines give g cot theta.
 *
 * @param gapMm width of the gap, may be negative (wood doubled). @param xiMm where a line leaves A.
 */
export function gapCarryMm(a: SideField, b: SideField, xiMm: number, gapMm: number): number {
  // A line at 3 deg travels 80 mm over 4 mm of gap, and turns on the way: 5 mm a step.
  const steps = 16;
  const last = a.angleRad.length - 1;
  let xi = xiMm;
  for (let k = 0; k < steps; k++) {
    const i = Math.min(last, Math.max(0, (xi / a.stepMm) | 0));
    const t = (k + 0.5) / steps;
    const from = 2 * a.angleRad[i];
    let turn = 2 * b.angleRad[i] - from;
    if (turn > Math.PI) turn -= 2 * Math.PI;
    if (turn < -Math.PI) turn += 2 * Math.PI;
    const angle = 0.5 * (from + t * turn);
    const sin = Math.sin(angle);
    const safe = Math.abs(sin) < leastSin ? (sin < 0 ? -leastSin : leastSin) : sin;
    xi += ((gapMm / steps) * Math.cos(angle)) / safe;
  }
  return xi - xiMm;
}
