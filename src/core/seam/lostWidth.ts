import { gapCarryMm } from './gapCarry.js';
import type { LineMeasures } from './lineMeasures.js';

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
const slidePriorMm = 2;
/** Wood this far apart across the grain counts as a new witness, mm. */
const witnessMm = 0.8;
const studentDegrees = 4;

/**
 * Weighs every pair (width lost g, slide u) by how well the lines of side A, carried through a
 * gap of g and slid by u, meet those of side B: P_A(xi) = P_B(xi - u + C(xi - u; g)).
 *
 * Residuals follow Student's t about a variance taken from lines of the same board with no seam,
 * widened by the error of the direction over the way through the gap; samples count by the wood
 * across the grain they stand for. The answer is the mean and spread of the posterior over the
 * grid, so a ridge (6 mm lost, or 4 mm and a slide of 12 mm) shows as a wide error bar.
 *
 * @param line the seam. @param noise variance of P_A - P_B at lines with no seam.
 * @returns null when fewer than three witnesses cross the seam.
 */
export function lostWidth(
  line: LineMeasures,
  noise: number,
  grid: LostWidthGrid = defaultLostWidthGrid,
): LostWidth | null {
  const profiles = thinned(line);
  if (profiles.weightSum < 3) return null;
  const gs = range(grid.fromMm, grid.toMm, grid.stepMm);
  const us = range(-grid.slideMaxMm, grid.slideMaxMm, grid.slideStepMm);
  const logP = new Float64Array(gs.length * us.length);
  gs.forEach((g, j) => {
    const carried = carryThroughGap(line, profiles, g);
    us.forEach((u, k) => {
      logP[j * us.length + k] = logLikelihood(profiles, carried, u, noise) + logPrior(u);
    });
  });
  return summary(gs, us, logP, profiles, (g, u) =>
    explainedShare(profiles, carryThroughGap(line, profiles, g), u),
  );
}

interface ThinProfiles {
  readonly stepMm: number;
  readonly a: Float64Array;
  readonly b: Float64Array;
  /** |sin theta| and the standard error of the direction, per sample. */
  readonly sin: Float64Array;
  readonly se: Float64Array;
  readonly weight: Float64Array;
  readonly weightSum: number;
}

function thinned(line: LineMeasures): ThinProfiles {
  const stride = 2;
  const stepMm = line.profileA.stepMm * stride;
  const n = Math.floor(line.profileA.value.length / stride);
  const pick = (v: Float64Array) =>
    Float64Array.from({ length: n }, (_, i) => (v[stride * i] + v[stride * i + 1]) / 2);
  const [a, b] = [pick(line.profileA.value), pick(line.profileB.value)];
  const sin = new Float64Array(n);
  const se = new Float64Array(n);
  const weight = new Float64Array(n);
  let weightSum = 0;
  for (let i = 0; i < n; i++) {
    const du = line.u[stride * i + 1] - (i > 0 ? line.u[stride * i - 1] : 0);
    sin[i] = Math.max(0.025, du / stepMm);
    const f = Math.min(
      line.fieldA.angleRad.length - 1,
      (((i + 0.5) * stepMm) / line.fieldA.stepMm) | 0,
    );
    se[i] = Math.hypot(line.fieldA.angleSeRad[f], line.fieldB.angleSeRad[f]) / 2;
    weight[i] = Number.isNaN(a[i]) ? 0 : Math.min(1, du / witnessMm);
    weightSum += weight[i];
  }
  return { stepMm, a, b, sin, se, weight, weightSum };
}

interface Carried {
  /** Side B as it would meet side A's lines after the gap, and the variance of that carrying. */
  readonly value: Float64Array;
  readonly variance: Float64Array;
}

function carryThroughGap(line: LineMeasures, p: ThinProfiles, gapMm: number): Carried {
  const n = p.a.length;
  const value = new Float64Array(n).fill(Number.NaN);
  const variance = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const xi = (i + 0.5) * p.stepMm;
    const at = (xi + gapCarryMm(line.fieldA, line.fieldB, xi, gapMm)) / p.stepMm - 0.5;
    const k = Math.floor(at);
    if (k < 0 || k + 1 >= n) continue;
    const slope = (p.b[k + 1] - p.b[k]) / p.stepMm;
    value[i] = p.b[k] + (at - k) * (p.b[k + 1] - p.b[k]);
    const wayMm = Math.abs(gapMm) / p.sin[i];
    variance[i] = (slope / p.sin[i]) ** 2 * (wayMm * p.se[i]) ** 2;
  }
  return { value, variance };
}

function logLikelihood(p: ThinProfiles, carried: Carried, u: number, noise: number): number {
  const shift = u / p.stepMm;
  const whole = Math.floor(shift);
  const part = shift - whole;
  const n = p.a.length;
  let sum = 0;
  let used = 0;
  for (let i = Math.max(0, -whole); i < Math.min(n, n - 1 - whole); i++) {
    const a = p.a[i + whole] + part * (p.a[i + whole + 1] - p.a[i + whole]);
    const r = a - carried.value[i];
    if (Number.isNaN(r)) continue;
    const v = noise + carried.variance[i];
    const w = p.weight[i];
    used += w;
    sum -=
      w *
      (((studentDegrees + 1) / 2) * Math.log1p((r * r) / (studentDegrees * v)) +
        0.5 * Math.log(v / noise));
  }
  return used > 0 ? (sum / used) * p.weightSum : Number.NEGATIVE_INFINITY;
}

const logPrior = (u: number) => -Math.log1p((u / slidePriorMm) ** 2);

function explainedShare(p: ThinProfiles, carried: Carried, u: number): number {
  const whole = Math.round(u / p.stepMm);
  let [w, ma, rr, aa] = [0, 0, 0, 0];
  for (let i = 0; i < p.a.length; i++) {
    const r = p.a[i + whole] - carried.value[i];
    if (!(r === r) || p.weight[i] === 0) continue;
    w += p.weight[i];
    ma += p.weight[i] * carried.value[i];
    aa += p.weight[i] * carried.value[i] ** 2;
    rr += p.weight[i] * r * r;
  }
  const variance = aa - (ma * ma) / Math.max(w, 1e-9);
  return Math.max(0, 1 - rr / (2 * Math.max(variance, 1e-12)));
}

function summary(
  gs: number[],
  us: number[],
  logP: Float64Array,
  _p: ThinProfiles,
  explained: (g: number, u: number) => number,
): LostWidth {
  let top = 0;
  for (let i = 1; i < logP.length; i++) if (logP[i] > logP[top]) top = i;
  const unslid = us.findIndex((u) => Math.abs(u) < 1e-9);
  let topUnslid = 0;
  let [w, mg, mu, gg, uu, gu] = [0, 0, 0, 0, 0, 0];
  gs.forEach((g, j) => {
    if (logP[j * us.length + unslid] > logP[topUnslid * us.length + unslid]) topUnslid = j;
    us.forEach((u, k) => {
      const q = Math.exp(logP[j * us.length + k] - logP[top]);
      w += q;
      mg += q * g;
      mu += q * u;
      gg += q * g * g;
      uu += q * u * u;
      gu += q * g * u;
    });
  });
  const [lostMm, slideMm] = [mg / w, mu / w];
  const lostSeMm = Math.sqrt(Math.max(0, gg / w - lostMm ** 2));
  const slideSeMm = Math.sqrt(Math.max(0, uu / w - slideMm ** 2));
  const best = { lostMm: gs[Math.floor(top / us.length)], slideMm: us[top % us.length] };
  return {
    lostMm,
    lostSeMm,
    slideMm,
    slideSeMm,
    correlation: (gu / w - lostMm * slideMm) / Math.max(1e-9, lostSeMm * slideSeMm),
    best,
    bestUnslidMm: gs[topUnslid],
    explained: explained(best.lostMm, best.slideMm),
  };
}

function range(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
}
