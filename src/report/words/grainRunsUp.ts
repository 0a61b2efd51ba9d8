import type { SeamResult } from '../../core/results/scoreResult.js';

/** Share of the seams' length that must agree on the way of the grain. */
const agreement = 0.5;

/**
 * Whether the grain runs up and down in the photo, as beside the seams: then the lines that run up
 * and down are the joints, and those from left to right the crosscuts. Mean of the doubled angles,
 * weighted by length; false where nothing is known.
 */
export function grainRunsUp(seams: readonly SeamResult[]): boolean {
  let [sum, told] = [0, 0];
  for (const { line, grain } of seams) {
    const lengthMm = Math.hypot(line.x2Mm - line.x1Mm, line.y2Mm - line.y1Mm);
    for (const deg of [grain.angleADeg, grain.angleBDeg]) {
      if (deg === null) continue;
      sum += lengthMm * Math.cos((2 * deg * Math.PI) / 180);
      told += lengthMm;
    }
  }
  return told > 0 && sum < -agreement * told;
}
