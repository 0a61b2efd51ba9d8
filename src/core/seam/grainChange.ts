import { halfTurnRad } from '../geometry/halfTurnRad.js';
import type { LineMeasures, WindowMeasures } from './lineMeasures.js';

/** Grain on both sides of a seam over its whole length, and how much it turns there. */
export interface GrainChange {
  readonly angleARad: number;
  readonly angleBRad: number;
  /** B less A, beyond what the boards' own curve gives between two windows. */
  readonly changeRad: number;
  readonly changeSeRad: number;
  /** Median colour step in bands of half a degree at 0.6 m. */
  readonly deltaE00: number;
}

/** Bands 5.2 mm wide: half a degree at 0.6 m. */
const colourBand = 1;
/** Directions less sure than this say nothing, rad (20 deg). */
const leastSureRad = 0.35;

/**
 * Angles on both sides (mean of the double angle, windows weighted by 1 / se^2) and their change.
 * One-sided windows lie a few millimetres apart, so curved grain turns between them without any
 * joint: the mean change along the boards' own lines is taken off, its scatter is the error.
 *
 * @returns null when no window has a direction.
 */
export function grainChange(seam: LineMeasures, own: readonly LineMeasures[]): GrainChange | null {
  const sure = seam.windows.filter((w) => w.angleSeRad < leastSureRad);
  if (sure.length === 0) return null;
  const usual = own.map((line) => meanTurn(line.windows));
  const told = usual.filter((turn): turn is number => turn !== null);
  const bias = told.length > 0 ? told.reduce((a, b) => a + b, 0) / told.length : 0;
  const spread = Math.sqrt(
    told.reduce((s, t) => s + (t - bias) ** 2, 0) / Math.max(1, told.length - 1),
  );
  const formal = Math.sqrt(1 / sure.reduce((s, w) => s + 1 / w.angleSeRad ** 2, 0));
  const steps = seam.windows.map((w) => w.colourStep(colourBand).deltaE).sort((a, b) => a - b);
  return {
    angleARad: meanAngle(sure, 'angleARad'),
    angleBRad: meanAngle(sure, 'angleBRad'),
    changeRad: (meanTurn(sure) ?? 0) - bias,
    changeSeRad: Math.max(formal, spread),
    deltaE00: steps[steps.length >> 1],
  };
}

const weightOf = (w: WindowMeasures) => 1 / Math.max(1e-6, w.angleSeRad ** 2);

function meanAngle(windows: readonly WindowMeasures[], side: 'angleARad' | 'angleBRad'): number {
  let cos = 0;
  let sin = 0;
  for (const w of windows) {
    cos += weightOf(w) * Math.cos(2 * w[side]);
    sin += weightOf(w) * Math.sin(2 * w[side]);
  }
  return 0.5 * Math.atan2(sin, cos);
}

function meanTurn(windows: readonly WindowMeasures[]): number | null {
  let sum = 0;
  let weight = 0;
  for (const w of windows) {
    if (w.angleSeRad >= leastSureRad) continue;
    sum += weightOf(w) * halfTurnRad(w.angleBRad - w.angleARad);
    weight += weightOf(w);
  }
  return weight > 0 ? sum / weight : null;
}
