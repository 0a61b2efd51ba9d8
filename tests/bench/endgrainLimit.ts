import { cholesky } from '../../src/core/board/endGrain/cholesky.js';
import { referenceFor } from '../../src/core/board/endGrain/coarsePith.js';
import { acrossRings, familyAbout } from '../../src/core/board/endGrain/ringFamily.js';
import { waveCovariance } from '../../src/core/board/endGrain/waveCovariance.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import type { NoiseSample } from '../../src/core/random/gradientNoise3.js';
import { ringWaviness } from '../../src/core/wood/ringWaviness.js';

/** How well the pith of an end can be told, as a share of its distance (rms). */
export interface PithLimit {
  /**
   * Least of any unbiased estimate that is linear in the ring directions, by the Gauss-Markov
   * theorem: (A^T C^-1 A)^-1 with the covariance C of the model's own waving rings. Where the
   * waving is Gaussian this is the Cramer-Rao bound as well.
   */
  readonly least: number;
  /** What weighing by `waveCovariance`, as the tool does, comes to under the same C. */
  readonly ours: number;
}

/** Draws of the model's waving rings from which C is taken. */
const draws = 3000;
const stepMm = 4;
/** Error of a direction read from a photo, rad. */
const readRad = 0.005;
/** Nearer to the pith the model's rings are made round, mm. */
const calmMm = 12;

/**
 * The bound for one end: directions on a 4 mm grid, the waving drawn anew from the wood model
 * 3000 times, with the rings' true centre known to the bound as the place to linearise at.
 */
export function pithLimit(
  widthMm: number,
  heightMm: number,
  pith: { readonly xMm: number; readonly yMm: number },
  seed: number,
): PithLimit {
  const places: { xMm: number; yMm: number }[] = [];
  for (let yMm = 2; yMm < heightMm; yMm += stepMm)
    for (let xMm = 2; xMm < widthMm; xMm += stepMm)
      if (Math.hypot(xMm - pith.xMm, yMm - pith.yMm) > 6) places.push({ xMm, yMm });
  const n = places.length;
  const family = familyAbout(pith, ...referenceFor(pith, widthMm / 2, heightMm / 2, widthMm));
  const distanceMm = 1 / family.curvature;
  const columns = places.map(({ xMm, yMm }) => {
    const [vx, vy] = acrossRings(family, xMm, yMm);
    const v2 = vx * vx + vy * vy;
    const [nx, ny] = [Math.cos(family.normalRad), Math.sin(family.normalRad)];
    const [dx, dy] = [xMm - family.cxMm, yMm - family.cyMm];
    // Slopes with the bearing and with the logarithm of the distance.
    return [(vx * nx + vy * ny) / v2, (vx * dy - vy * dx) / v2 / distanceMm] as const;
  });
  const covariance = modelCovariance(places, pith, seed);
  const weighing = (matrix: Float64Array) => {
    const factor = cholesky(matrix, n)!;
    const ca = factor.solve(columns.map(([a]) => a));
    const cb = factor.solve(columns.map(([, b]) => b));
    const dot = (k: 0 | 1, by: Float64Array) =>
      by.reduce((sum, w, i) => sum + w * columns[i]![k], 0);
    const [aa, ab, bb] = [dot(0, ca), dot(1, ca), dot(1, cb)];
    const det = aa * bb - ab * ab;
    // Rows of (A^T W A)^-1 A^T W: what is added to bearing and log distance per direction.
    return {
      inverse: [bb / det, aa / det] as const,
      bearing: ca.map((w, i) => (bb * w - ab * cb[i]!) / det),
      distance: cb.map((w, i) => (aa * w - ab * ca[i]!) / det),
    };
  };
  const best = weighing(covariance);
  // The inverse of a covariance from few draws is too large by this (Wishart).
  const small = (draws - n - 2) / draws;
  const tool = weighing(toolCovariance(places, family, covariance));
  const under = (w: Float64Array) => {
    let sum = 0;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) sum += w[i]! * w[j]! * covariance[i * n + j]!;
    return sum;
  };
  return {
    least: Math.sqrt((best.inverse[0] + best.inverse[1]) / small),
    ours: Math.sqrt(under(tool.bearing) + under(tool.distance)),
  };
}

type Place = { readonly xMm: number; readonly yMm: number };

/** Covariance of how far the model's rings stray from circles at the places, rad^2. */
function modelCovariance(
  places: readonly Place[],
  pith: Place,
  seed: number,
): Float64Array<ArrayBuffer> {
  const n = places.length;
  const sum = new Float64Array(n * n);
  const random = createRandom(seed);
  const noise: NoiseSample = { value: 0, dx: 0, dy: 0, dz: 0 };
  const stray = new Float64Array(n);
  for (let draw = 0; draw < draws; draw++) {
    const wave = ringWaviness(random.integer(1e9), 1);
    const turn = random.uniform(0, 2 * Math.PI);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const z = random.uniform(-2000, 2000);
    places.forEach(({ xMm, yMm }, i) => {
      const [px, py] = [xMm - pith.xMm, yMm - pith.yMm];
      const [x, y] = [cos * px - sin * py, sin * px + cos * py];
      const radius = Math.hypot(x, y);
      wave(x, y, z, noise);
      // The model's own age: radius + waviness radius / (radius + 12 mm) (createRingField).
      const calm = radius / (radius + calmMm);
      const outward =
        1 +
        (noise.value * calmMm) / (radius + calmMm) ** 2 +
        (calm * (noise.dx * x + noise.dy * y)) / radius;
      const aside = (calm * (noise.dy * x - noise.dx * y)) / radius;
      stray[i] = Math.atan2(aside, outward);
    });
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++) sum[i * n + j] = sum[i * n + j]! + stray[i]! * stray[j]!;
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) sum[j * n + i] = sum[i * n + j] = sum[i * n + j]! / draws;
    sum[i * n + i] = sum[i * n + i]! + readRad ** 2;
  }
  return sum;
}

/** What the tool takes the covariance for, its strength set to the model's mean variance. */
function toolCovariance(
  places: readonly Place[],
  family: ReturnType<typeof familyAbout>,
  model: Float64Array,
): Float64Array<ArrayBuffer> {
  const n = places.length;
  const points = places.map(({ xMm, yMm }) => {
    const [vx, vy] = acrossRings(family, xMm, yMm);
    const v = Math.hypot(vx, vy);
    return { xMm, yMm, tx: -vy / v, ty: vx / v };
  });
  let variance = 0;
  for (let i = 0; i < n; i++) variance += model[i * n + i]! / n;
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++)
      matrix[i * n + j] = variance * waveCovariance(points[i]!, points[j]!);
    matrix[i * n + i] = matrix[i * n + i]! + readRad ** 2 + 0.04 * variance;
  }
  return matrix;
}
