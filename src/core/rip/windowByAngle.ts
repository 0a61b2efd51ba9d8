import { middleDirectionRad } from '../geometry/middleDirectionRad.js';
import { type BandPair, bandFrequenciesPerMm } from '../seam/bandAmplitudes.js';
import type { WindowMeasures } from '../seam/lineMeasures.js';
import { closedFormBreak } from '../visibility/closedFormBreak.js';
import { contrastSensitivity } from '../visibility/contrastSensitivity.js';
import { cyclesPerDeg } from '../visibility/cyclesPerDeg.js';

/** Local grain of one stretch, as the closed form takes it. */
export interface LocalGrain {
  /** Direction against the joint, rad. */
  readonly angleRad: number;
  /** Distance between the lines that the eye sees best, mm, and their contrast. */
  readonly spacingMm: number;
  readonly contrast: number;
  /** Which octave of the grain these lines belong to. */
  readonly octave: number;
}

/**
 * The lines of one stretch: direction from both sides, spacing and contrast of the octave that
 * the eye sees best from distanceMm.
 *
 * @returns null where no lines cross.
 */
export function localGrain(window: WindowMeasures, distanceMm: number): LocalGrain | null {
  let best: BandPair | null = null;
  let most = 0;
  for (const band of window.bands) {
    const s = contrastSensitivity(cyclesPerDeg(1 / band.frequencyPerMm, distanceMm));
    const seen = s * (band.amplitudeA + band.amplitudeB);
    if (seen > most) [best, most] = [band, seen];
  }
  if (!best) return null;
  return {
    angleRad: middleDirectionRad(window.angleARad, window.angleBRad),
    spacingMm: 1 / best.frequencyPerMm,
    contrast: (best.amplitudeA + best.amplitudeB) / 2,
    octave: bandFrequenciesPerMm.indexOf(best.bandPerMm),
  };
}

/**
 * Break of the lines in one stretch by the closed form: what angle, spacing and contrast alone
 * say that a loss and a slide will cost, whatever the wood between really does.
 *
 * @returns times over just visible, unmasked; null where no lines cross.
 */
export function windowByAngle(
  grain: LocalGrain | null,
  lostMm: number,
  slideMm: number,
  distanceMm: number,
): number | null {
  return grain && closedFormBreak({ ...grain, lostMm, slideMm, distanceMm });
}
