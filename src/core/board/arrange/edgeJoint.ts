import type { Cue } from '../../results/visibilityResult.js';
import { jointMeasures, type LineMeasures } from '../../seam/lineMeasures.js';
import { seamVisibility } from '../../seam/seamVisibility.js';
import type { ArrangeOptions } from './arrangeOptions.js';
import type { BoardEdge } from './boardEdges.js';

/**
 * How visible the joint of two edges would be.
 *
 * @param apartMm shift of the upper board less that of the lower, both from lying centred, +x.
 * @returns v null when the photos cannot tell.
 */
export function edgeJoint(
  above: BoardEdge,
  below: BoardEdge,
  apartMm: number,
  { distanceMm, useColour }: ArrangeOptions,
): { readonly v: number | null; readonly cue: Cue | null } {
  const windowMm = (distanceMm * Math.PI) / 180;
  const slideMm = (below.lengthMm - above.lengthMm) / 2 + apartMm;
  const joint = jointMeasures(
    { wood: above.above, etaMm: 0 },
    { wood: below.below, etaMm: 0 },
    windowMm,
    slideMm,
  );
  const from = Math.max(0, slideMm);
  const to = Math.min(below.lengthMm, above.lengthMm + slideMm);
  const windows = joint.windows.filter(({ atMm }) => atMm > from && atMm < to);
  const own = [...above.own, ...below.own];
  const asSeen = (line: LineMeasures) => (useColour ? line : withoutColour(line));
  const { v, cue } = seamVisibility(asSeen({ ...joint, windows }), own.map(asSeen), distanceMm);
  return { v, cue };
}

function withoutColour(line: LineMeasures): LineMeasures {
  const windows = line.windows.map((w) => ({ ...w, colourDeltaE: w.colourDeltaE.map(() => 0) }));
  return { ...line, windows };
}
