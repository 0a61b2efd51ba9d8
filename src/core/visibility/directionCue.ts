import { halfTurnRad } from '../geometry/halfTurnRad.js';
import { contrastSensitivity } from './contrastSensitivity.js';
import { cyclesPerDeg } from './cyclesPerDeg.js';

const thresholdRad = (0.6 * Math.PI) / 180;
const peakSensitivity = 157;

/**
 * How visible the turn of the grain at the joint is, in times over just visible.
 *
 * x = |dtheta| / (0.6 deg / sqrt(c')), c' = min(1, c S(f) / 157).
 *
 * @param turn changeRad: direction on B less direction on A, radians (modulo pi); contrast:
 *   amplitude of the lines over their mean; spacingMm: distance between lines, mm; distanceMm:
 *   viewing distance, mm.
 * @returns 0 or more, before masking.
 */
export function directionCue({
  changeRad,
  contrast,
  spacingMm,
  distanceMm,
}: {
  readonly changeRad: number;
  readonly contrast: number;
  readonly spacingMm: number;
  readonly distanceMm: number;
}): number {
  const sensitivity = contrastSensitivity(cyclesPerDeg(spacingMm, distanceMm));
  const clarity = Math.min(1, Math.max(0, (contrast * sensitivity) / peakSensitivity));
  const turned = Math.abs(halfTurnRad(changeRad));
  return (turned * Math.sqrt(clarity)) / thresholdRad;
}
