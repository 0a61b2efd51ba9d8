import type { Cue } from '../../results/visibilityResult.js';
import { jointMeasures } from '../../seam/lineMeasures.js';
import { visibilityFromSums } from '../../seam/visibilityFromSums.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import type { BoardEdge } from './boardEdges.js';
import { lineChannelSums } from './lineChannelSums.js';

/** How visible a joint would be; v null when the photos cannot tell. */
export interface EdgeJoint {
  readonly v: number | null;
  readonly cue: Cue | null;
}

/**
 * How visible the joint of two edges would be, whichever of them is named first.
 *
 * Reading a joint with its other side as side A gives a V that differs by a few per cent (the
 * octaves are taken from A's lines), so both readings count alike: V^3 = (V_ab^3 + V_ba^3) / 2.
 *
 * @param apartMm shift of the upper board less that of the lower, both from lying centred, +x.
 */
export function edgeJoint(
  one: BoardEdge,
  two: BoardEdge,
  apartMm: number,
  options: ArrangeOptions,
): EdgeJoint {
  // Turned half round, the upper board is the lower one and the shift keeps its sign.
  const there = oneReading(one, two, apartMm, options);
  const back = oneReading(two, one, apartMm, options);
  if (there.v === null || back.v === null) return there.v === null ? back : there;
  const v = Math.cbrt((there.v ** 3 + back.v ** 3) / 2);
  return { v, cue: there.v >= back.v ? there.cue : back.cue };
}

function oneReading(
  above: BoardEdge,
  below: BoardEdge,
  apartMm: number,
  { distanceMm, useColour }: ArrangeOptions,
): EdgeJoint {
  const windowMm = (distanceMm * Math.PI) / 180;
  const slideMm = (below.lengthMm - above.lengthMm) / 2 + apartMm;
  const joint = jointMeasures(above.above.line, below.below.line, windowMm, slideMm);
  const from = Math.max(0, slideMm);
  const to = Math.min(below.lengthMm, above.lengthMm + slideMm);
  const windows = joint.windows.filter(({ atMm }) => atMm > from && atMm < to);
  const sums = lineChannelSums(windows, distanceMm, useColour);
  return visibilityFromSums(sums, [...above.own, ...below.own]);
}
