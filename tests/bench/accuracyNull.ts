import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { finderView } from '../../src/core/seam/find/finderView.js';
import { type SeamMaps, seamMaps } from '../../src/core/seam/find/seamMaps.js';
import {
  maxTiltRad,
  type StrongestLine,
  strongestLine,
  usualTiltRad,
} from '../../src/core/seam/find/strongestLine.js';
import { panelPlanes } from '../../src/core/seam/panelPlanes.js';

/** p of the strongest line along a whole panel, however weak: the finder's own first step. */
export const strongestP = (photo: PanelPhoto): number =>
  Math.min(...twoLooks(photo).map((line) => line.p));

/** Its evidence, less what the best of so many lines is bound to have: s of `boardP`. */
export const strongestExcess = (photo: PanelPhoto): number =>
  Math.max(...twoLooks(photo).map((line) => line.evidence - Math.log(line.tries)));

/** What the finder reads of a whole panel along its length. */
export function finderMaps(photo: PanelPhoto): SeamMaps {
  const planes = panelPlanes(photo);
  const { reduced, blocks, pxPerMm } = finderView(planes.logLuminance, planes.pxPerMm);
  return seamMaps(planes, reduced, blocks, pxPerMm);
}

function twoLooks(photo: PanelPhoto): StrongestLine[] {
  const maps = finderMaps(photo);
  const region = { col0: 0, col1: maps.columns, row0: 0, row1: maps.rows };
  return [usualTiltRad, maxTiltRad].flatMap(
    (tiltRad) => strongestLine(maps, region, tiltRad, createRandom(1)) ?? [],
  );
}

/** Kolmogorov-Smirnov distance from the uniform law, and its 95 % critical value 1.36/sqrt(n). */
export function uniformDistance(p: readonly number[]): { distance: number; critical: number } {
  const sorted = [...p].sort((a, b) => a - b);
  const n = sorted.length;
  const distance = Math.max(
    ...sorted.map((value, i) => Math.max((i + 1) / n - value, value - i / n)),
  );
  return { distance, critical: 1.36 / Math.sqrt(n) };
}
