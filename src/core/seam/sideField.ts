import { gaussianKernel } from '../filter/gaussianKernel.js';
import type { BlockTensor } from '../grain/blockTensor.js';

/**
 * Grain along one side of a line, one entry per block column of the strip: the direction next to
 * the line from that side alone, and what its windows' scatter says of it.
 */
export interface SideField {
  readonly stepMm: number;
  readonly angleRad: Float64Array;
  /** The same from nearer wood alone, and from all of it to the window's end (`depthShares`). */
  readonly scalesRad: readonly Float64Array[];
  readonly angleSeRad: Float64Array;
  readonly coherence: Float64Array;
  /** rms slope across the grain, per mm of log luminance. */
  readonly energy: Float64Array;
}

/** Where a one-sided window begins and fades, mm from the line. */
export interface SideWindow {
  readonly alongSigmaMm: number;
  readonly acrossSigmaMm: number;
  /** Nearer than this the gradient still feels the joint itself. */
  readonly clearMm: number;
  /** Wood deeper than this is not looked at (another joint lies there). */
  readonly deepestMm: number;
}

/** About a degree of visual angle at 600 mm along the seam, half a degree into the board. */
export const defaultSideWindow: SideWindow = {
  alongSigmaMm: 3,
  acrossSigmaMm: 4,
  clearMm: 1.2,
  deepestMm: 15,
};

/** Depth of the other windows against the first: wood close to the line, and all there is. */
const depthShares: readonly number[] = [0.3, Number.POSITIVE_INFINITY];

/**
 * One-sided structure tensor along a line at eta = etaMm of the strip.
 *
 * Products are summed with a half-Gaussian into the board and a Gaussian along the line; the
 * direction of least change is theta = atan2(2 Jxy, Jxx - Jyy) / 2 + 90 deg. Its standard error
 * comes from the scatter of the blocks' double-angle vectors about the window's own:
 * var(theta) = sum w^2 e^2 / (4 |sum w q|^2), e the component of q = (Jxx - Jyy, 2 Jxy) across
 * the mean, doubled for the correlation of neighbouring blocks along a line.
 *
 * @param side -1 for side A (eta smaller), +1 for side B.
 */
export function sideField(
  blocks: BlockTensor,
  reachAMm: number,
  etaMm: number,
  side: -1 | 1,
  window: SideWindow = defaultSideWindow,
): SideField {
  const { width: n, height, stepMm } = blocks;
  const columns = (): Columns => ({ q1: new Float64Array(n), q2: new Float64Array(n) });
  const [own, ...scales] = [1, ...depthShares].map(columns);
  const t = new Float64Array(n);
  const square = { a: new Float64Array(n), b: new Float64Array(n), c: new Float64Array(n) };
  for (let j = 0; j < height; j++) {
    const depth = side * ((j + 0.5) * stepMm - reachAMm - etaMm);
    if (depth < window.clearMm || depth > window.deepestMm) continue;
    const weightAt = (share: number) =>
      Math.exp(-0.5 * (depth / (share * window.acrossSigmaMm)) ** 2);
    const w = weightAt(1);
    const weights = depthShares.map(weightAt);
    for (let i = 0; i < n; i++) {
      const k = j * n + i;
      const q1 = blocks.jxx[k] - blocks.jyy[k];
      const q2 = 2 * blocks.jxy[k];
      own.q1[i] += w * q1;
      own.q2[i] += w * q2;
      t[i] += w * (blocks.jxx[k] + blocks.jyy[k]);
      square.a[i] += w * w * q1 * q1;
      square.b[i] += w * w * q2 * q2;
      square.c[i] += w * w * q1 * q2;
      for (let s = 0; s < scales.length; s++) {
        scales[s].q1[i] += weights[s] * q1;
        scales[s].q2[i] += weights[s] * q2;
      }
    }
  }
  const kernel = gaussianKernel(window.alongSigmaMm / stepMm);
  return {
    ...fieldFromColumns({ ...own, t }, square, stepMm, kernel),
    scalesRad: scales.map((scale) => anglesOf(scale, kernel)),
  };
}

interface Columns {
  readonly q1: Float64Array;
  readonly q2: Float64Array;
}

/** Direction of least change, a right angle from that of the slopes, in (-pi/2, pi/2]. */
function leastChangeRad(q1: number, q2: number): number {
  const angle = 0.5 * Math.atan2(q2, q1);
  return angle > 0 ? angle - Math.PI / 2 : angle + Math.PI / 2;
}

function anglesOf({ q1, q2 }: Columns, kernel: Float64Array): Float64Array {
  const r = (kernel.length - 1) / 2;
  const windowed = (column: Float64Array, i: number) => {
    let sum = 0;
    for (let d = Math.max(-r, -i); d <= Math.min(r, column.length - 1 - i); d++) {
      sum += kernel[d + r] * column[i + d];
    }
    return sum;
  };
  return q1.map((_, i) => leastChangeRad(windowed(q1, i), windowed(q2, i)));
}

function fieldFromColumns(
  column: { q1: Float64Array; q2: Float64Array; t: Float64Array },
  square: { a: Float64Array; b: Float64Array; c: Float64Array },
  stepMm: number,
  kernel: Float64Array,
): Omit<SideField, 'scalesRad'> {
  const n = column.t.length;
  const out = {
    stepMm,
    angleRad: new Float64Array(n),
    angleSeRad: new Float64Array(n),
    coherence: new Float64Array(n),
    energy: new Float64Array(n),
  };
  const r = (kernel.length - 1) / 2;
  for (let i = 0; i < n; i++) {
    let q1 = 0;
    let q2 = 0;
    let t = 0;
    let a = 0;
    let b = 0;
    let c = 0;
    let norm = 0;
    for (let d = Math.max(-r, -i); d <= Math.min(r, n - 1 - i); d++) {
      const w = kernel[d + r];
      norm += w;
      q1 += w * column.q1[i + d];
      q2 += w * column.q2[i + d];
      t += w * column.t[i + d];
      a += w * w * square.a[i + d];
      b += w * w * square.b[i + d];
      c += w * w * square.c[i + d];
    }
    const size = Math.hypot(q1, q2) + 1e-12;
    const [cos, sin] = [q1 / size, q2 / size];
    const across = Math.max(0, sin * sin * a + cos * cos * b - 2 * sin * cos * c);
    out.angleRad[i] = leastChangeRad(q1, q2);
    out.angleSeRad[i] = Math.min(Math.PI / 4, Math.sqrt(2 * across) / (2 * size));
    out.coherence[i] = size / (t + 1e-12);
    out.energy[i] = Math.sqrt(t / norm);
  }
  return out;
}
