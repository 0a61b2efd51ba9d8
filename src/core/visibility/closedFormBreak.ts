import { contrastSensitivity } from './contrastSensitivity.js';
import { cyclesPerDeg } from './cyclesPerDeg.js';
import { grazingFactor } from './grazingFactor.js';
import type { JointShift } from './jointShift.js';
import { lineOffsetMm } from './lineOffsetMm.js';

/** Even, straight grain at a joint, and where the eye is. */
export interface EvenGrainJoint extends JointShift {
  /** Amplitude of the lines over their mean, 0 to 1. */
  readonly contrast: number;
  /** Distance between lines across the grain, mm. */
  readonly spacingMm: number;
  /** Viewing distance, mm. */
  readonly distanceMm: number;
}

/**
 * Visibility of the break in even, straight grain after a kerf and a slide: what a rip will cost
 * before the saw is switched on.
 *
 * V = (c S(f))^0.8 |sin(pi delta / s)| min(1, f |sin theta|)^(1/3), delta of `lineOffsetMm`.
 * Not growing with the kerf: a kerf of one spacing is as good as none. With no fitted constant
 * it gives vernier thresholds of 6 to 8 arcsec, where Bradley & Skottun 1987 measured about 10.
 *
 * @returns times over just visible, 0 or more; no masking by the board's own figure.
 */
export function closedFormBreak(joint: EvenGrainJoint): number {
  const { contrast, spacingMm, angleRad, distanceMm } = joint;
  const frequency = cyclesPerDeg(spacingMm, distanceMm);
  const drive = Math.max(0, contrast * contrastSensitivity(frequency)) ** 0.8;
  const miss = Math.abs(Math.sin((Math.PI * lineOffsetMm(joint)) / spacingMm));
  return drive * miss * grazingFactor(frequency, angleRad);
}
