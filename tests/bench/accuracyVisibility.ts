import { bootstrap, type Interval } from './accuracyIntervals.js';
import type { PlacedSeam } from './accuracyPlaced.js';
import { type AccuracyRow, accuracyRow } from './accuracyRow.js';
import type { SeamTrial } from './accuracySeams.js';
import { median, rankCorrelation } from './forecastStatistics.js';

/** Below this a joint has disappeared and a ratio of V means nothing. */
const leastV = 0.5;

/** V of the joints of a panel: by truth, and as scored with the joints placed by hand. */
export type VisibilityPair = readonly [truth: number, scored: number];

/** The pairs of one panel, joints with the grain within 2 deg of them left out. */
export function visibilityPairs(trial: SeamTrial, placed: readonly PlacedSeam[]): VisibilityPair[] {
  return trial.seams.flatMap(({ v, crossingDeg }, k) => {
    const scored = placed[k].result.visibility.v;
    return scored === null || crossingDeg < 2 ? [] : [[v, scored] as const];
  });
}

/** Rows on how the scored V follows the V by truth; panels are the groups. */
export function visibilityRows(
  what: string,
  panels: readonly (readonly VisibilityPair[])[],
): AccuracyRow[] {
  const n = panels.flat().length;
  const section = 'V of placed joints against V by truth';
  const row = (name: string, figure: Interval) =>
    accuracyRow(section, `${what}: ${name}`, n, figure, 2);
  const ln = (v: number) => Math.log(Math.max(leastV, v));
  return [
    row(
      'rank correlation',
      bootstrap(panels, (pairs) =>
        rankCorrelation(
          pairs.map(([truth]) => truth),
          pairs.map(([, scored]) => scored),
        ),
      ),
    ),
    row(
      'median abs(d ln V), below 0.5 counted as 0.5',
      bootstrap(panels, (pairs) =>
        median(pairs.map(([truth, scored]) => Math.abs(ln(scored) - ln(truth)))),
      ),
    ),
    row(
      'median ln (scored / truth)',
      bootstrap(panels, (pairs) => median(pairs.map(([truth, scored]) => ln(scored) - ln(truth)))),
    ),
  ];
}
