import { cholesky } from '../endGrain/cholesky.js';
import type { RingCounts } from './ringCounts.js';

/** What the face of a board says about how its rings stand to it. */
export interface FaceRingAngle {
  /** Ring angle to the face in strips across the width, unsigned: 0 flatsawn, 90 quartered. */
  readonly ringAngle: readonly FaceAngle[];
  /** Place across the width over or under the pith, and its error; null where no cathedral shows it. */
  readonly pith: { readonly yMm: number; readonly seMm: number } | null;
}

/** Ring angle in one strip; null where it cannot be told. */
export interface FaceAngle {
  readonly yMm: number;
  readonly angleDeg: number | null;
  readonly seDeg: number;
}

/** A pith farther than this from the board's middle is no furniture log's, mm (assumption). */
const farthestMm = 350;
/** Ring widths of lumber: log-normal about 1.7 mm (trade.md, ring widths), ln sd. */
const usualWidthMm = 1.7;
const widthLogSd = 0.6;
/** One ring against its neighbours' trend: ln sd, and how many rings a run of years lasts. */
const ringLogSd = 0.33;
const runOfRings = 3.5;
/** What counting itself errs by: a share, and rings per mm. */
const countShare = 0.08;
const countPerMm = 0.05;
const mostSeDeg = 15;
/** The pith is under the face, or off it by a fifth of its width, as surely as this. */
const leastOver = 0.95;
const reach = 0.2;

/**
 * Ring angle to the face from how many rings are crossed per millimetre of the width.
 *
 * With the pith h below the face at place y0, the ring at y has radius R = sqrt(h^2 + (y - y0)^2),
 * stands at the angle phi to the face with sin phi = |y - y0| / R, and
 *
 *     rings per mm = sin phi / w
 *
 *     slope of a line = a + (b h - t R) / (y - y0)
 *
 * (a, b the lean of the stem in the face and into it, t its taper: trade.md 5.1 with a lean),
 * so the lines draw apart over the pith (the cathedral) and close up towards the sides, where they lean
 * opposite ways. All (y0, h,
 * w) are weighed by how well they foretell counts and slopes; widths of neighbouring rings go together,
 * and the ring left and right of the pith is the same ring. Before the photo is seen, any place of
 * the log is as likely as any other. The answer is the mean over what is left, its error the
 * spread. Angles are told only where a cathedral shows the pith under the face or just beside it:
 * on a face of even lines, rings of 1 mm at 45 deg and of 1.4 mm at 90 deg look the same.
 *
 * @returns null with fewer than 5 strips or no rings.
 */
export function faceRingAngle(
  { yMm, perMm }: RingCounts,
  slopes: Float64Array,
  heightMm: number,
): FaceRingAngle | null {
  const n = yMm.length;
  const rings = perMm.reduce((sum, f) => sum + f, 0) * (n > 1 ? yMm[1] - yMm[0] : 0);
  if (n < 5 || rings < 3) return null;
  const tried: { y0: number; h: number; score: number; area: number }[] = [];
  for (const [y0, stepY] of places(heightMm)) {
    for (const [h, stepH] of depths) {
      if (Math.hypot(y0 - heightMm / 2, h) > farthestMm) continue;
      tried.push({
        y0,
        h,
        score: scoreOf(yMm, perMm, y0, h) + slopeScore(yMm, slopes, y0, h),
        area: stepY * stepH,
      });
    }
  }
  const best = tried.reduce((most, one) => Math.max(most, one.score), Number.NEGATIVE_INFINITY);
  const weighed = tried.map((one) => ({ ...one, weight: one.area * Math.exp(one.score - best) }));
  const mean = (of: (one: { y0: number; h: number }) => number) => {
    let [w, a, b] = [0, 0, 0];
    for (const one of weighed) {
      const value = of(one);
      w += one.weight;
      a += one.weight * value;
      b += one.weight * value * value;
    }
    return { mean: a / w, sd: Math.sqrt(Math.max(0, b / w - (a / w) ** 2)) };
  };
  const pith = mean(({ y0 }) => y0);
  const over = mean(({ y0 }) => (y0 > -reach * heightMm && y0 < (1 + reach) * heightMm ? 1 : 0));
  const cathedral = over.mean > leastOver;
  const deg = 180 / Math.PI;
  return {
    pith: cathedral ? { yMm: pith.mean, seMm: pith.sd } : null,
    ringAngle: Array.from(yMm, (y) => {
      const { mean: angle, sd } = mean(({ y0, h }) => Math.atan2(Math.abs(y - y0), h) * deg);
      const seDeg = Math.hypot(sd, leastSeDeg);
      return { yMm: y, angleDeg: cathedral && seDeg <= mostSeDeg ? angle : null, seDeg };
    }),
  };
}

/** Rings are no circles: their waving alone turns them by so much, deg. */
const leastSeDeg = 4;

/** Tried places of the pith across the width, close over the board and wide apart far off. */
function places(heightMm: number): [number, number][] {
  const out: [number, number][] = [];
  const middle = heightMm / 2;
  for (let away = 0, step = 3; away < farthestMm; away += step) {
    step = away < middle + 10 ? 3 : 0.1 * (away - middle) + 3;
    out.push([middle + away, step]);
    if (away > 0) out.push([middle - away, step]);
  }
  return out;
}

const depths: readonly (readonly [number, number])[] = Array.from({ length: 22 }, (_, k) => {
  const h = 3 * 1.25 ** k;
  return [h, 0.25 * h] as const;
});

const widthSteps = 13;

/** ln of how well a pith foretells the counts, summed over ring widths. */
function scoreOf(yMm: Float64Array, perMm: Float64Array, y0: number, h: number): number {
  const n = yMm.length;
  const stripMm = yMm[1] - yMm[0];
  const radius = yMm.map((y) => Math.hypot(y - y0, h));
  // |dR/dy| over the strip, so that the strip over the pith is not taken for its own middle.
  const rise = yMm.map((y) => {
    const [a, b] = [y - stripMm / 2 - y0, y + stripMm / 2 - y0];
    const [ra, rb] = [Math.hypot(a, h), Math.hypot(b, h)];
    return (a * b < 0 ? ra + rb - 2 * h : Math.abs(rb - ra)) / stripMm;
  });
  let [sum, best] = [0, Number.NEGATIVE_INFINITY];
  const scores: number[] = [];
  for (let k = 0; k < widthSteps; k++) {
    const z = -2.4 + (4.8 * k) / (widthSteps - 1);
    const w = usualWidthMm * Math.exp(z * widthLogSd);
    const matrix = new Float64Array(n * n);
    const left = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      const mu = rise[i] / w;
      left[i] = perMm[i] - mu;
      for (let j = 0; j <= i; j++) {
        const same = Math.exp(-Math.abs(radius[i] - radius[j]) / (runOfRings * w));
        matrix[i * n + j] = spread(mu, stripMm) * spread(rise[j] / w, stripMm) * same;
      }
      matrix[i * n + i] += countPerMm ** 2 + (countShare * mu) ** 2;
    }
    const factor = cholesky(matrix, n);
    if (!factor) continue;
    const solved = factor.solve(left);
    let chi = 0;
    for (let i = 0; i < n; i++) chi += left[i] * solved[i];
    const score = -0.5 * (chi + factor.logDet + z * z);
    scores.push(score);
    best = Math.max(best, score);
  }
  for (const score of scores) sum += Math.exp(score - best);
  return best + Math.log(sum || 1e-300);
}

/** Usual lean in the face and into it (1.5 deg), taper and its spread (3 to 10 mm/m, trade.md 5.1). */
const leanSd = 0.026;
const taper = { mean: 0.0065, sd: 0.003 };
/** Slopes err by so much, and by the rings' waving along the stem over sin phi. */
const slopeSd = 0.012;
const wavingSd = 0.01;

/** ln of how well a pith foretells which way the lines lean, leans and taper averaged over. */
function slopeScore(yMm: Float64Array, slopes: Float64Array, y0: number, h: number): number {
  const n = yMm.length;
  const halfStripMm = (yMm[1] - yMm[0]) / 2;
  const aside = yMm.map((y) => Math.sign(y - y0 || 1) * Math.max(halfStripMm, Math.abs(y - y0)));
  const radius = aside.map((u) => Math.hypot(u, h));
  const matrix = new Float64Array(n * n);
  const left = slopes.map((slope, i) => slope + (taper.mean * radius[i]) / aside[i]);
  for (let i = 0; i < n; i++) {
    const steep = radius[i] / aside[i];
    for (let j = 0; j <= i; j++) {
      matrix[i * n + j] =
        leanSd ** 2 * (1 + (h * h) / (aside[i] * aside[j])) +
        taper.sd ** 2 * steep * (radius[j] / aside[j]);
    }
    matrix[i * n + i] += slopeSd ** 2 + (wavingSd * steep) ** 2;
  }
  const factor = cholesky(matrix, n);
  if (!factor) return Number.NEGATIVE_INFINITY;
  const solved = factor.solve(left);
  let chi = 0;
  for (let i = 0; i < n; i++) chi += left[i] * solved[i];
  return -0.5 * (chi + factor.logDet);
}

/** Scatter of a strip's count from its rings' widths: many rings average out. */
const spread = (mu: number, stripMm: number) =>
  (ringLogSd * mu) / Math.sqrt(1 + (mu * stripMm) / (2 * runOfRings));
