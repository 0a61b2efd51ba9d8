import { type PooledVisibility, visibilityFromSums } from '../seam/visibilityFromSums.js';
import { type LineSums, sumsBetween } from './lineSums.js';

/**
 * Visibility of a part of a joint, as `seamVisibility` has it for a whole one.
 *
 * @param joint sums along the joint. @param own sums along lines of the same board with no joint.
 * @returns v null when nothing is told between the two places.
 */
export function segmentVisibility(
  joint: LineSums,
  own: readonly LineSums[],
  fromMm: number,
  toMm: number,
): PooledVisibility {
  return visibilityFromSums(
    sumsBetween(joint, fromMm, toMm),
    own.map((line) => sumsBetween(line, fromMm, toMm)),
  );
}
