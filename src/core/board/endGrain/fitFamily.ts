import { halfTurnRad } from '../../geometry/halfTurnRad.js';
import { acrossRings, type RingFamily } from './ringFamily.js';
import type { SlopeSamples } from './slopeSamples.js';

/** A fitted family and how the slopes scatter about it. */
export interface FittedFamily {
  readonly family: RingFamily;
  /** Share of the slopes' weight that points to the pith within the scatter. */
  readonly share: number;
  /** Robust scatter of the slopes' directions about the family, rad. */
  readonly scatterRad: number;
}

const rounds = 25;
const nearPithMm = 3;

/**
 * Least squares of ring normals that meet, robust: slopes are weighted by their steepness and by
 * 1 / (1 + (r / s)^2)^2, r the angle by which the slope misses the pith, s narrowing to 6 degrees.
 *
 * @param weight of each sample; 0 leaves it out. @param start where to begin.
 * @param widestRad where s begins, default 14 degrees.
 */
export function fitFamily(
  samples: SlopeSamples,
  weight: Float32Array,
  start: RingFamily,
  widestRad = 0.25,
): FittedFamily {
  let { normalRad, curvature } = start;
  for (let round = 0; round < rounds; round++) {
    const s = Math.max(0.105, widestRad * 0.8 ** round);
    const step = normalStep(samples, weight, { ...start, normalRad, curvature }, s);
    normalRad += step.normalRad;
    curvature += step.curvature;
    if (round > 8 && Math.abs(step.normalRad) < 1e-5 && Math.abs(step.curvature) < 1e-8) break;
  }
  const family = { ...start, normalRad, curvature };
  return { family, ...spreadAbout(samples, weight, family) };
}

/** How far a slope misses the pith, rad in (-pi/2, pi/2]. */
export function missRad(family: RingFamily, xMm: number, yMm: number, angleRad: number): number {
  const [vx, vy] = acrossRings(family, xMm, yMm);
  return halfTurnRad(angleRad - Math.atan2(vy, vx));
}

function normalStep(
  samples: SlopeSamples,
  weight: Float32Array,
  family: RingFamily,
  s: number,
): { readonly normalRad: number; readonly curvature: number } {
  const { cxMm, cyMm, normalRad, curvature } = family;
  const [nx, ny] = [Math.cos(normalRad), Math.sin(normalRad)];
  const near2 = (nearPithMm * curvature) ** 2;
  let aa = 0;
  let ab = 0;
  let bb = 0;
  let ra = 0;
  let rb = 0;
  for (let i = 0; i < samples.count; i++) {
    if (weight[i] === 0) continue;
    const dx = samples.xMm[i] - cxMm;
    const dy = samples.yMm[i] - cyMm;
    const vx = nx - curvature * dx;
    const vy = ny - curvature * dy;
    const v2 = vx * vx + vy * vy + 1e-12;
    const r = halfTurnRad(samples.angleRad[i] - Math.atan2(vy, vx));
    const robust = 1 / (1 + (r / s) ** 2) ** 2;
    const w = weight[i] * robust * (v2 / (v2 + near2));
    // d(direction)/d(normal) and d(direction)/d(curvature).
    const a = (vx * nx + vy * ny) / v2;
    const b = (-vx * dy + vy * dx) / v2;
    aa += w * a * a;
    ab += w * a * b;
    bb += w * b * b;
    ra += w * a * r;
    rb += w * b * r;
  }
  const det = aa * bb - ab * ab;
  if (!(det > 1e-12 * aa * bb)) return { normalRad: 0, curvature: 0 };
  return { normalRad: (bb * ra - ab * rb) / det, curvature: (aa * rb - ab * ra) / det };
}

function spreadAbout(
  samples: SlopeSamples,
  weight: Float32Array,
  family: RingFamily,
): { readonly share: number; readonly scatterRad: number } {
  let total = 0;
  let near = 0;
  let squares = 0;
  for (let i = 0; i < samples.count; i++) {
    const r = missRad(family, samples.xMm[i], samples.yMm[i], samples.angleRad[i]);
    total += weight[i];
    if (Math.abs(r) > 0.35) continue;
    near += weight[i];
    squares += weight[i] * r * r;
  }
  return { share: near / (total || 1), scatterRad: Math.sqrt(squares / (near || 1)) };
}
