import { contrastSensitivity } from './contrastSensitivity.js';
import { cyclesPerDeg } from './cyclesPerDeg.js';

/** One octave of the lines that the two sides bring to the joint. */
export interface BandBreak {
  /** Middle of the octave, cycles per mm across the grain. */
  readonly frequencyPerMm: number;
  /** Contrast amplitude on side A and on side B. */
  readonly amplitudeA: number;
  readonly amplitudeB: number;
  /** |A - B| of the complex amplitudes: 0 where every line runs through. */
  readonly difference: number;
}

/**
 * How visible the break of the lines is, in times over just visible.
 *
 * x = [ sum_b ((c_b S(f_b))^0.8 |A - B| / (|A| + |B|))^3 ]^(1/3), c_b = (|A| + |B|) / 2. Two even
 * gratings that miss by delta give `closedFormBreak` before grazing.
 *
 * @param bands octaves carried along the grain to the joint from either side.
 * @param distanceMm viewing distance, mm.
 * @returns 0 or more, before masking; 0 without bands.
 */
export function breakCue(bands: readonly BandBreak[], distanceMm: number): number {
  let sum = 0;
  for (const { frequencyPerMm, amplitudeA, amplitudeB, difference } of bands) {
    const total = amplitudeA + amplitudeB;
    if (total <= 0) continue;
    const sensitivity = contrastSensitivity(cyclesPerDeg(1 / frequencyPerMm, distanceMm));
    const drive = Math.max(0, (total / 2) * sensitivity) ** 0.8;
    sum += (drive * (difference / total)) ** 3;
  }
  return Math.cbrt(sum);
}
