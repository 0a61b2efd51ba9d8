import { ownFigures } from '../seam/visibilityFromSums.js';
import { amongLinesFactor } from '../visibility/amongLinesFactor.js';
import { cubicMean } from '../visibility/cubicMean.js';
import { maskCue } from '../visibility/maskCue.js';
import type { JointLine } from './cutLines.js';
import { type LineSums, sumsBetween } from './lineSums.js';
import { windowByAngle } from './windowByAngle.js';

/** A joint by the closed form: over its whole length, and stretch by stretch. */
export interface ByAngle {
  readonly v: number | null;
  readonly windows: readonly (number | null)[];
}

/**
 * The closed form over a whole joint: cubic mean of its stretches. Each stretch is masked by what
 * the boards' own lines do in the same octave and by lines near the joint's direction, so that it
 * stands on one scale with the picture.
 *
 * @param own sums along the boards' own lines. @param lossMm width lost, mm. @param slideMm how
 *   far side A moves, mm.
 */
export function jointByAngle(
  joint: JointLine,
  own: readonly LineSums[],
  lossMm: number,
  slideMm: number,
  distanceMm: number,
): ByAngle {
  const figures = ownFigures(own.map((line) => sumsBetween(line, 0, Number.POSITIVE_INFINITY)));
  const windows = joint.grain.map((grain) => {
    const x = windowByAngle(grain, lossMm, slideMm, distanceMm);
    if (x === null || !grain) return null;
    return amongLinesFactor(grain.angleRad) * maskCue(x, figures[grain.octave]?.rms ?? 0);
  });
  return { v: cubicMean(windows), windows };
}
