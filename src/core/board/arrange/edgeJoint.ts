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
 * Turned half round it is the same joint with its sides exchanged, and its V the same but for where
 * stretches and bins begin: it is measured once, the darker edge above.
 *
 * @param apartMm shift of the upper board less that of the lower, both from lying centred, +x.
 */
export function edgeJoint(
  one: BoardEdge,
  two: BoardEdge,
  apartMm: number,
  { distanceMm, useColour }: ArrangeOptions,
): EdgeJoint {
  // Turned half round, the upper board is the lower one and the shift keeps its sign.
  const [above, below] = one.colour[0] <= two.colour[0] ? [one, two] : [two, one];
  const windowMm = (distanceMm * Math.PI) / 180;
  const slideMm = (below.lengthMm - above.lengthMm) / 2 + apartMm;
  const joint = jointMeasures(above.above.line, below.below.line, windowMm, slideMm);
  const from = Math.max(0, slideMm);
  const to = Math.min(below.lengthMm, above.lengthMm + slideMm);
  const windows = joint.windows.filter(({ atMm }) => atMm > from && atMm < to);
  const sums = lineChannelSums(windows, distanceMm, useColour);
  return visibilityFromSums(sums, [...above.own, ...below.own]);
}
