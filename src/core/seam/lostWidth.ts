import { gapCarryMm } from './gapCarry.js';
import type { LineMeasures } from './lineMeasures.js';
import { expected, meeting, openVariance } from './lostLikelihood.js';
import { type LostProfiles, lostProfiles } from './lostProfiles.js';
import { middleHalf } from './middleHalf.js';
import { windowOffset } from './windowOffset.js';

/** Width lost and slide with their covariance, from the lines on both sides of one seam. */
export interface LostWidth {
  readonly lostMm: number;
  readonly lostSeMm: number;
  readonly slideMm: number;
  readonly slideSeMm: number;
  readonly correlation: number;
  /** The best single pair, and the best pair of nothing slid. */
  readonly best: { readonly lostMm: number; readonly slideMm: number };
  readonly bestUnslidMm: number;
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

/** Scale of the Cauchy prior on the slide, mm: a maker slides pieces little unless on purpose. */
const slidePriorMm = 1;
/** The width that so many witnesses must be carried over for an answer: a kerf, mm. */
const kerfMm = 3.175;
const leastWitnesses = 3;
/**
 * A slide's stated error over half of the middle 68 % of what the photo allows. The prior's long
 * tails make the spread itself say too much; the factor was fitted on drawn rips that the bench
 * does not use (seeds 400 to 489).
 */
const middleToSe = 0.85;

/**
 * Weighs every pair (width lost g, slide u) by how well the lines of side A, carried through a
 * gap of g and slid by u, meet those of side B: P_A(xi) = P_B(xi - u + C(xi - u; g)).
 *
 * log P = log likelihood (`meeting`: what is expected of every place, given how well its direction
 * is known) + prior. The answer is the mean and spread of P over the grid (of the slide: its middle
 * 68 %), so a ridge (6 mm lost, or 4 mm and a slide of 12 mm) shows as a wide error bar.
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
  const firm = openVariance(line, profiles, kerfMm, spacingMm);
  const witnesses = firm.reduce((sum, open, i) => sum + profiles.weight[i] * (1 - open), 0);
  if (witnesses < leastWitnesses) return null;
  const usual = ownDiscord(own, spacingMm);
  if (usual === null) return null;
  const gs = range(grid.fromMm, grid.toMm, grid.stepMm);
  const us = range(-grid.slideMaxMm, grid.slideMaxMm, grid.slideStepMm);
  const logP = new Float64Array(gs.length * us.length);
  const discords = new Float64Array(logP.length);
  gs.forEach((g, j) => {
    const carried = carryThroughGap(line, profiles, g);
    const wanted = expected(profiles, openVariance(line, profiles, g, spacingMm), usual);
    us.forEach((u, k) => {
      const met = meeting(profiles, carried, u / profiles.stepMm, wanted);
      const i = j * us.length + k;
      discords[i] = met.discord;
      logP[i] = met.logLikelihood - Math.log1p((u / slidePriorMm) ** 2);
    });
  });
  return summary(gs, us, logP, discords);
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
    .map((p) => meeting(p, p.b, 0, expected(p, new Float64Array(p.a.length), 0)).discord)
    .filter((d) => !Number.isNaN(d))
    .sort((a, b) => a - b);
  return values.length > 0 ? Math.min(1, values[values.length >> 1]) : null;
}

/** Side B as it would meet side A's lines after a gap. */
function carryThroughGap(line: LineMeasures, p: LostProfiles, gapMm: number): Float64Array {
  const n = p.a.length;
  const value = new Float64Array(n).fill(Number.NaN);
  for (let i = 0; i < n; i++) {
    const xi = (i + 0.5) * p.stepMm;
    const at = (xi + gapCarryMm(line.fieldA, line.fieldB, xi, gapMm)) / p.stepMm - 0.5;
    const k = Math.floor(at);
    if (k >= 0 && k + 1 < n) value[i] = p.b[k] + (at - k) * (p.b[k + 1] - p.b[k]);
  }
  return value;
}

function summary(
  gs: number[],
  us: number[],
  logP: Float64Array,
  discords: Float64Array,
): LostWidth {
  let top = 0;
  for (let i = 1; i < logP.length; i++) if (logP[i] > logP[top]) top = i;
  const unslid = us.findIndex((u) => Math.abs(u) < 1e-9);
  let topUnslid = 0;
  let [w, mg, mu, gg, uu, gu] = [0, 0, 0, 0, 0, 0];
  const alongSlides = new Float64Array(us.length);
  gs.forEach((g, j) => {
    if (logP[j * us.length + unslid] > logP[topUnslid * us.length + unslid]) topUnslid = j;
    us.forEach((u, k) => {
      const q = Math.exp(logP[j * us.length + k] - logP[top]);
      w += q;
      alongSlides[k] += q;
      mg += q * g;
      mu += q * u;
      gg += q * g * g;
      uu += q * u * u;
      gu += q * g * u;
    });
  });
  const [lostMm, slideMm] = [mg / w, mu / w];
  const lostSeMm = Math.sqrt(Math.max(0, gg / w - lostMm ** 2));
  const slideSdMm = Math.sqrt(Math.max(0, uu / w - slideMm ** 2));
  const best = { lostMm: gs[Math.floor(top / us.length)], slideMm: us[top % us.length] };
  return {
    lostMm,
    lostSeMm,
    slideMm,
    slideSeMm: middleToSe * middleHalf(us, alongSlides),
    correlation: (gu / w - lostMm * slideMm) / Math.max(1e-9, lostSeMm * slideSdMm),
    best,
    bestUnslidMm: gs[topUnslid],
    explained: Number.isNaN(discords[top]) ? 0 : 1 - discords[top],
  };
}

function range(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
}
