import type { SideField } from './sideField.js';

/**
 * How much wood across the grain a line has crossed when it reaches xi: u(xi) = integral of
 * |sin theta| along the line, mm, theta from both sides. Grain lines are s apart in u whatever
 * their slant; where the line runs along the grain, u stands still and nothing crosses.
 *
 * @returns u at every profile step, growing.
 */
export function acrossGrainCoordinate(
  a: SideField,
  b: SideField,
  count: number,
  stepMm: number,
): Float64Array {
  const u = new Float64Array(count);
  let sum = 0;
  for (let n = 0; n < count; n++) {
    const i =
      Math.min(a.angleRad.length - 1, b.angleRad.length - 1, ((n + 0.5) * stepMm) / a.stepMm) | 0;
    const cos2 = Math.cos(2 * a.angleRad[i]) + Math.cos(2 * b.angleRad[i]);
    const sin2 = Math.sin(2 * a.angleRad[i]) + Math.sin(2 * b.angleRad[i]);
    sum += Math.abs(Math.sin(0.5 * Math.atan2(sin2, cos2))) * stepMm;
    u[n] = sum;
  }
  return u;
}
