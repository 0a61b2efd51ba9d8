import { evenSteps } from '../statistics/evenSteps.js';
import { gapCarryMm } from './gapCarry.js';
import type { LineMeasures } from './lineMeasures.js';
import { expected, meeting, openVariance } from './lostLikelihood.js';
import { type LostProfiles, lostProfiles } from './lostProfiles.js';
import { type LostSummary, lostSummary, partsOfLine } from './lostSummary.js';
import { windowOffset } from './windowOffset.js';

/** Width lost, slide and wedge with their errors, from the lines on both sides of one seam. */
export interface LostWidth extends LostSummary {
  /** Share of the profiles' variance that the best pair explains, 1 = every line meets. */
  readonly explained: number;
}

/** The grid of widths and slides that is weighed, mm. */
export interface LostWidthGrid {
  readonly fromMm: number;
  readonly toMm: number;
  readonly stepMm: number;
  readonly slideMaxMm: number;
  readonly slideStepMm: number;
}

export const defaultLostWidthGrid: LostWidthGrid = {
  fromMm: -0.5,
  toMm: 10,
  stepMm: 0.125,
  slideMaxMm: 15,
  slideStepMm: 0.5,
};

/** Directions are spot on over a part of the joint, or as far off as their errors say. */
const missedShares = [0, 1];

/** The width that so many witnesses must be carried over for an answer: a kerf, mm. */
const kerfMm = 3.175;
const leastWitnesses = 3;

/**
 * Weighs every pair (width lost g, slide u) by how well the lines of side A, carried through a
 * gap of g and slid by u, meet those of side B: P_A(xi) = P_B(xi - u + C(xi - u; g)).
 *
 * `meeting` gives the log likelihood (what is expected of every place, given how well its direction
 * is known), `lostSummary` the answer, with a wedge: g may grow evenly along the joint.
 *
 * @param line the seam. @param own lines of the same boards with no seam.
 * @returns null when fewer than three witnesses (lines or parts of lines) can be carried over a
 *   kerf, or when the boards have no line of their own to tell how well lines meet uncut.
 */
export function lostWidth(
  line: LineMeasures,
  own: readonly LineMeasures[],
  grid: LostWidthGrid = defaultLostWidthGrid,
): LostWidth | null {
  const spacingMm = medianSpacingMm(line);
  if (spacingMm === null) return null;
  const profiles = lostProfiles(line, spacingMm);
  const firm = openVariance(line, profiles, kerfMm, spacingMm, 1, grid);
  const witnesses = firm.reduce((sum, open, i) => sum + profiles.weight[i] * (1 - open), 0);
  if (witnesses < leastWitnesses) return null;
  const usual = ownDiscord(own, spacingMm);
  if (usual === null) return null;
  const gs = evenSteps(grid.fromMm, grid.toMm, grid.stepMm);
  const us = evenSteps(-grid.slideMaxMm, grid.slideMaxMm, grid.slideStepMm);
  const logs = new Float64Array(gs.length * us.length * partsOfLine);
  const discords = new Float64Array(gs.length * us.length);
  gs.forEach((g, j) => {
    const carried = carryThroughGap(line, profiles, g);
    const wanted = missedShares.map((missed) =>
      expected(profiles, openVariance(line, profiles, g, spacingMm, missed, grid), usual),
    );
    us.forEach((u, k) => {
      const i = j * us.length + k;
      const parts = logs.subarray(i * partsOfLine, (i + 1) * partsOfLine);
      discords[i] = meeting(profiles, carried, u / profiles.stepMm, wanted, parts);
    });
  });
  const { top, ...summary } = lostSummary(gs, us, logs);
  return { ...summary, explained: Number.isNaN(discords[top]) ? 0 : 1 - discords[top] };
}

/** Median distance between the lines of a seam's windows; null where none cross. */
function medianSpacingMm(line: LineMeasures): number | null {
  const told = line.windows
    .map(windowOffset)
    .flatMap((offset) => (offset ? [offset.spacingMm] : []))
    .sort((a, b) => a - b);
  return told.length > 0 ? told[told.length >> 1] : null;
}

/** Discord of lines of the same board with no seam: what carrying alone leaves. */
function ownDiscord(own: readonly LineMeasures[], spacingMm: number): number | null {
  const values = own
    .map((line) => lostProfiles(line, spacingMm))
    .filter((p) => p.witnesses >= leastWitnesses)
    .map((p) => {
      const wanted = expected(p, new Float64Array(p.a.length), 0);
      return meeting(p, p.b, 0, [wanted], new Float64Array(partsOfLine));
    })
    .filter((d) => !Number.isNaN(d))
    .sort((a, b) => a - b);
  return values.length > 0 ? Math.min(1, values[values.length >> 1]) : null;
}

/** Side B as it would meet side A's lines after a gap. */
function carryThroughGap(line: LineMeasures, p: LostProfiles, gapMm: number): Float64Array {
  const n = p.a.length;
  const value = new Float64Array(n).fill(Number.NaN);
  for (let i = 0; i < n; i++) {
    if (p.weight[i] === 0) continue;
    const xi = (i + 0.5) * p.stepMm;
    const at = (xi + gapCarryMm(line.fieldA, line.fieldB, xi, gapMm)) / p.stepMm - 0.5;
    const k = Math.floor(at);
    if (k >= 0 && k + 1 < n) value[i] = p.b[k] + (at - k) * (p.b[k + 1] - p.b[k]);
  }
  return value;
}
