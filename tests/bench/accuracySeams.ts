import type { PanelPhoto } from '../../src/core/image/panelPhoto.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { findSeams } from '../../src/core/seam/find/findSeams.js';
import { panelPlanes } from '../../src/core/seam/panelPlanes.js';
import { sharePercent } from './accuracyIntervals.js';
import { matchSeams } from './accuracyMatch.js';
import type { BenchPanel } from './accuracyPanels.js';
import { type AccuracyRow, accuracyRow, type Target } from './accuracyRow.js';
import { ringContrast, seamVByTruth, type TrueV } from './accuracyTruth.js';

/** How one panel went through the finder. */
export interface SeamTrial {
  readonly name: string;
  /** Per true seam: V by truth and whether it was found in its place. */
  readonly seams: readonly (TrueV & { readonly found: boolean })[];
  readonly falseSeams: number;
  /** p of what was found, smallest first. */
  readonly p: readonly number[];
}

/** Finds the seams of a panel as `score` does (seed 1) and holds them against the truth. */
export function seamTrial(
  name: string,
  panel: BenchPanel,
  photo: PanelPhoto = panel.photo,
): SeamTrial {
  const { truth, spec } = panel;
  const found = findSeams(panelPlanes(photo), createRandom(1));
  const match = matchSeams(
    truth.seams,
    found.map((seam) => seam.line),
  );
  const contrastAt = ringContrast(panel);
  return {
    name,
    seams: spec.seams.map((_, k) => ({
      ...seamVByTruth(panel, k, contrastAt),
      found: match.found[k],
    })),
    falseSeams: match.falseSeams,
    p: found.map((seam) => seam.p).sort((a, b) => a - b),
  };
}

/** A panel with nothing to find: every seam found is a false one. */
export function seamlessTrial(name: string, photo: PanelPhoto): SeamTrial {
  const found = findSeams(panelPlanes(photo), createRandom(1));
  return { name, seams: [], falseSeams: found.length, p: found.map(({ p }) => p) };
}

/** Which seams count: all that lines cross (2 deg or more; nothing else can be found), or the rest. */
type Crossing = 'crossed' | 'along the grain';

/** Recall among seams of at least this V by truth. */
export function recallRow(
  section: string,
  what: string,
  trials: readonly SeamTrial[],
  leastV: number,
  target?: Target,
  crossing: Crossing = 'crossed',
): AccuracyRow {
  const seams = trials
    .flatMap((trial) => trial.seams)
    .filter(({ v, crossingDeg }) => v >= leastV && crossingDeg >= 2 === (crossing === 'crossed'));
  const hits = seams.filter(({ found }) => found).length;
  const text = leastV > 0 ? `${what}, V by truth >= ${leastV}: found, %` : `${what}: found, %`;
  return accuracyRow(section, text, seams.length, sharePercent(hits, seams.length), 0, target);
}

/** Recall by the closed form alone, as if the board's own figure hid nothing; no target. */
export function unmaskedRecallRow(
  section: string,
  what: string,
  trials: readonly SeamTrial[],
  leastV: number,
): AccuracyRow {
  const unmasked = trials.map((trial) => ({
    ...trial,
    seams: trial.seams.map((seam) => ({ ...seam, v: seam.unmasked })),
  }));
  return recallRow(section, `${what}, nothing masked`, unmasked, leastV);
}

/** Panels in which something was found that is no seam. */
export function falseAlarmRow(
  section: string,
  what: string,
  trials: readonly SeamTrial[],
  target?: Target,
): AccuracyRow {
  const bad = trials.filter(({ falseSeams }) => falseSeams > 0).length;
  const text = `${what}: panels with a false seam, %`;
  return accuracyRow(section, text, trials.length, sharePercent(bad, trials.length), 0, target);
}
