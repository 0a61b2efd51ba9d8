import { type PooledVisibility, visibilityFromSums } from '../seam/visibilityFromSums.js';
import { type LineSums, stretchesBetween, sumsBetween } from './lineSums.js';

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
  const [from, to] = stretchesBetween(joint, fromMm, toMm);
  const place = from * (joint.stretches + 1) + to;
  const ofJoint = knownOf(joint, own);
  const seen =
    ofJoint.get(place) ??
    visibilityFromSums(
      sumsBetween(joint, fromMm, toMm),
      own.map((line) => sumsBetween(line, fromMm, toMm)),
    );
  ofJoint.set(place, seen);
  return seen;
}

type ByPlace = Map<number, PooledVisibility>;

/** A front's places lie closer together than stretches do: most ask what was asked before. */
const known = new WeakMap<readonly LineSums[], WeakMap<LineSums, ByPlace>>();

function knownOf(joint: LineSums, own: readonly LineSums[]): ByPlace {
  const besides = known.get(own) ?? new WeakMap<LineSums, ByPlace>();
  known.set(own, besides);
  const ofJoint = besides.get(joint) ?? new Map<number, PooledVisibility>();
  besides.set(joint, ofJoint);
  return ofJoint;
}
