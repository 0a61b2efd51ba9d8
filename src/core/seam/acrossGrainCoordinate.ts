import { middleDirectionRad } from '../geometry/middleDirectionRad.js';
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
  const blocks = Math.min(a.angleRad.length, b.angleRad.length);
  const crossed = new Float64Array(blocks);
  for (let i = 0; i < blocks; i++) {
    crossed[i] = crossedShare(a.angleRad[i], b.angleRad[i]) * stepMm;
  }
  let sum = 0;
  for (let n = 0; n < count; n++) {
    sum += crossed[Math.min(blocks - 1, ((n + 0.5) * stepMm) / a.stepMm) | 0];
    u[n] = sum;
  }
  return u;
}

/** |sin| of the mean of two directions. */
function crossedShare(a: number, b: number): number {
  return Math.abs(Math.sin(middleDirectionRad(a, b)));
}
