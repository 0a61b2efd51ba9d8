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
const leastWitnesses = 3;

/**
 * Weighs every pair (width lost g, slide u) by how well the lines of side A, carried through a
 * gap of g and slid by u, meet those of side B: P_A(xi) = P_B(xi - u + C(xi - u; g)).
 *
 * Each pair's discord D (0 all lines meet, 1 nothing in common) is weighed as a Gaussian whose
 * variance is not known: log P = -(N / 2) ln(D + D0 / 2) + prior, N the wood across the grain that
 * the seam crosses over `witnessMm`, D0 the discord of lines of the same board with no seam. The
 * answer is the mean and spread of P over the grid, so a ridge (6 mm lost, or 4 mm and a slide of
 * 12 mm) shows as a wide error bar.
 *
 * @param line the seam. @param own lines of the same boards with no seam.
 * @returns null when fewer than three witnesses cross the seam.
 */
export function lostWidth(
  line: LineMeasures,
  own: readonly LineMeasures[],
  grid: LostWidthGrid = defaultLostWidthGrid,
): LostWidth | null {
  const profiles = thinned(line);
  if (profiles.weightSum < leastWitnesses) return null;
  const usual = ownDiscord(own);
  const gs = range(grid.fromMm, grid.toMm, grid.stepMm);
  const us = range(-grid.slideMaxMm, grid.slideMaxMm, grid.slideStepMm);
  const logP = new Float64Array(gs.length * us.length);
  const discords = new Float64Array(logP.length);
  gs.forEach((g, j) => {
    const carried = carryThroughGap(line, profiles, g);
    us.forEach((u, k) => {
      const d = discord(profiles, carried, u);
      const i = j * us.length + k;
      discords[i] = d;
      logP[i] = Number.isNaN(d)
        ? Number.NEGATIVE_INFINITY
        : -(profiles.weightSum / 2) * Math.log(d + usual / 2) + logPrior(u);
    });
  });
  return summary(gs, us, logP, discords);
}

/** Discord of lines of the same board with no seam: what carrying alone leaves. */
function ownDiscord(own: readonly LineMeasures[]): number {
  const values = own
    .map(thinned)
    .filter((p) => p.weightSum >= leastWitnesses)
    .map((p) => discord(p, p.b, 0))
    .filter((d) => !Number.isNaN(d))
    .sort((a, b) => a - b);
  return values.length > 0 ? values[values.length >> 1] : 0.1;
}

interface ThinProfiles {
  readonly stepMm: number;
  readonly a: Float64Array;
  readonly b: Float64Array;
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
  const weight = new Float64Array(n);
  let weightSum = 0;
  for (let i = 0; i < n; i++) {
    const du = line.u[stride * i + 1] - (i > 0 ? line.u[stride * i - 1] : 0);
    weight[i] = Number.isNaN(a[i]) ? 0 : Math.min(1, du / witnessMm);
    weightSum += weight[i];
  }
  return { stepMm, a, b, weight, weightSum };
}

/** Side B as it would meet side A's lines after a gap. */
function carryThroughGap(line: LineMeasures, p: ThinProfiles, gapMm: number): Float64Array {
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

/**
 * How far two profiles are from meeting: D = sum w (a - b)^2 / (sum w (a - am)^2 + sum w (b - bm)^2),
 * 0 where every line runs through, about 1 where they have nothing in common.
 */
function discord(p: ThinProfiles, carried: Float64Array, u: number): number {
  const shift = u / p.stepMm;
  const whole = Math.floor(shift);
  const part = shift - whole;
  const n = p.a.length;
  let [w, sa, sb, aa, bb, rr] = [0, 0, 0, 0, 0, 0];
  for (let i = Math.max(0, -whole); i < Math.min(n, n - 1 - whole); i++) {
    const a = p.a[i + whole] + part * (p.a[i + whole + 1] - p.a[i + whole]);
    const b = carried[i];
    const r = a - b;
    if (Number.isNaN(r)) continue;
    const q = p.weight[i];
    w += q;
    sa += q * a;
    sb += q * b;
    aa += q * a * a;
    bb += q * b * b;
    rr += q * r * r;
  }
  if (w < 0.5 * p.weightSum) return Number.NaN;
  return rr / (aa - (sa * sa) / w + bb - (sb * sb) / w + 1e-12);
}

const logPrior = (u: number) => -Math.log1p((u / slidePriorMm) ** 2);

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
    explained: 1 - discords[top],
  };
}

function range(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
}
