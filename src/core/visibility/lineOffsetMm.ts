import type { JointShift } from './jointShift.js';

/**
 * How far the lines of the two sides miss each other, measured across the grain.
 *
 * delta = g cos(theta) - u sin(theta).
 *
 * @returns offset in mm, not wrapped to the line spacing.
 */
export function lineOffsetMm({ lostMm, slideMm, angleRad }: JointShift): number {
  return lostMm * Math.cos(angleRad) - slideMm * Math.sin(angleRad);
}
