import { type Cholesky, cholesky } from './cholesky.js';
import type { RingCell } from './ringCells.js';
import { acrossRings, type RingFamily } from './ringFamily.js';
import { type RingPoint, waveCovariance } from './waveCovariance.js';

/** Circles fitted to ring directions that stray from them as wood does. */
export interface FittedRings {
  readonly family: RingFamily;
  /** Covariance of (normalRad, curvature): [aa, ab, bb]. */
  readonly covariance: readonly [number, number, number];
  /** Strength of the waviness found, rad (rms of the strayed direction). */
  readonly waveRad: number;
  /** Best guess of how far the rings stray from the circle at a point, rad, and its error. */
  strayAt(xMm: number, yMm: number): { readonly rad: number; readonly seRad: number };
}

const strengths: readonly number[] = [0.01, 0.018, 0.03, 0.045, 0.065, 0.09, 0.13, 0.2];
const outlier = 3.5;

/**
 * One step of generalised least squares for (normal, curvature) and the waviness's strength.
 *
 *     off_i = A_i (d normal, d curvature) + stray(x_i) + noise_i
 *
 * The strays of neighbouring rings agree (`waveCovariance`), so thirty rings that bulge together
 * count as one bulge, not as thirty proofs of a curve: that is what keeps a far pith's error
 * honest. Strength by the highest restricted likelihood; cells off by 3.5 errors lose their say.
 *
 * @param cells directions against `family`.
 * @returns null with fewer than 8 cells.
 */
export function fitRings(cells: readonly RingCell[], family: RingFamily): FittedRings | null {
  let used = cells;
  let best: Solved | null = null;
  for (let round = 0; round < 3; round++) {
    if (used.length < 8) return null;
    best = null;
    const base = baseCovariance(used, family);
    for (const strength of strengths) {
      const solved = solve(used, base, strength, family);
      if (solved && (best === null || solved.score > best.score)) best = solved;
    }
    if (best === null) return null;
    const kept = used.filter((_, i) => best!.pull[i] < outlier);
    if (kept.length === used.length) break;
    used = kept;
  }
  if (best === null) return null;
  const { step, covariance, strength, factor, weights, points } = best;
  return {
    family: {
      ...family,
      normalRad: family.normalRad + step[0],
      curvature: family.curvature + step[1],
    },
    covariance,
    waveRad: strength,
    strayAt: (xMm, yMm) => {
      const at = pointOf(family, xMm, yMm);
      const reach = Float64Array.from(points, (p) => strength ** 2 * waveCovariance(at, p));
      const back = factor.solve(reach);
      let [rad, told] = [0, 0];
      for (let i = 0; i < reach.length; i++) {
        rad += reach[i] * weights[i];
        told += reach[i] * back[i];
      }
      const left = Math.max(0, strength ** 2 * waveCovariance(at, at) - told);
      return { rad, seRad: Math.sqrt(left) };
    },
  };
}

interface Solved {
  readonly step: readonly [number, number];
  readonly covariance: readonly [number, number, number];
  readonly strength: number;
  readonly score: number;
  readonly factor: Cholesky;
  readonly weights: Float64Array;
  readonly points: readonly RingPoint[];
  /** Each cell's misfit in standard errors. */
  readonly pull: Float64Array;
}

function baseCovariance(cells: readonly RingCell[], family: RingFamily): Float64Array {
  const n = cells.length;
  const points = cells.map((cell) => pointOf(family, cell.xMm, cell.yMm));
  const base = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) base[i * n + j] = waveCovariance(points[i], points[j]);
  return base;
}

function solve(
  cells: readonly RingCell[],
  base: Float64Array,
  strength: number,
  family: RingFamily,
): Solved | null {
  const n = cells.length;
  const matrix = base.map((value) => value * strength ** 2);
  // What wavers within a cell does not average out wholly: a tenth of the strength per cell.
  for (let i = 0; i < n; i++) matrix[i * n + i] += cells[i].seRad ** 2 + (0.2 * strength) ** 2;
  const factor = cholesky(matrix, n);
  if (!factor) return null;
  const columns = cells.map((cell) => slopesOf(family, cell.xMm, cell.yMm));
  const ca = factor.solve(columns.map(([a]) => a));
  const cb = factor.solve(columns.map(([, b]) => b));
  let [aa, ab, bb, ra, rb] = [0, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    aa += columns[i][0] * ca[i];
    ab += columns[i][0] * cb[i];
    bb += columns[i][1] * cb[i];
    ra += cells[i].offRad * ca[i];
    rb += cells[i].offRad * cb[i];
  }
  const det = aa * bb - ab * ab;
  if (!(det > 1e-12 * aa * bb)) return null;
  const step = [(bb * ra - ab * rb) / det, (aa * rb - ab * ra) / det] as const;
  const left = cells.map(
    (cell, i) => cell.offRad - columns[i][0] * step[0] - columns[i][1] * step[1],
  );
  const weights = factor.solve(left);
  let chi = 0;
  for (let i = 0; i < n; i++) chi += left[i] * weights[i];
  const pull = Float64Array.from(
    left,
    (value, i) => Math.abs(value) / Math.sqrt(matrix[i * n + i] + 1e-9),
  );
  return {
    step,
    covariance: [bb / det, -ab / det, aa / det],
    strength,
    score: -0.5 * (chi + factor.logDet + Math.log(det)),
    factor,
    weights,
    points: cells.map((cell) => pointOf(family, cell.xMm, cell.yMm)),
    pull,
  };
}

/** Change of the direction across the rings with normal and curvature. */
function slopesOf(family: RingFamily, xMm: number, yMm: number): readonly [number, number] {
  const [vx, vy] = acrossRings(family, xMm, yMm);
  const v2 = vx * vx + vy * vy + 1e-9;
  const [nx, ny] = [Math.cos(family.normalRad), Math.sin(family.normalRad)];
  const [dx, dy] = [xMm - family.cxMm, yMm - family.cyMm];
  return [(vx * nx + vy * ny) / v2, (-vx * dy + vy * dx) / v2];
}

function pointOf(family: RingFamily, xMm: number, yMm: number): RingPoint {
  const [vx, vy] = acrossRings(family, xMm, yMm);
  const v = Math.hypot(vx, vy) + 1e-9;
  return { xMm, yMm, tx: -vy / v, ty: vx / v };
}
