import { gaussianKernel } from '../filter/gaussianKernel.js';
import { smoothedRow } from '../filter/smoothedRow.js';
import type { BlockTensor } from '../grain/blockTensor.js';
import { directionSpreadRad } from '../grain/directionSpreadRad.js';
import type { CarriedBlocks } from './carriedBlocks.js';
import { ScatterSums, SlopeSums } from './columnSums.js';

/** Direction next to a line, one entry per block column of the strip. */
export interface SideAngles {
  readonly stepMm: number;
  readonly angleRad: Float64Array;
}

/**
 * Grain along one side of a line, one entry per block column of the strip: the direction next to
 * the line from that side alone, and what its windows' scatter says of it.
 */
export interface SideField extends SideAngles {
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
/** As in `grainAngleSe`, fitted on drawn rips (seeds 500 to 544): carried half as far, at an edge. */
const scatterGain = 2.8;
const linesAlone = 2;
const floorRad = 0.3 * (Math.PI / 180);
/** How far round a place its neighbours' directions are looked at, mm. */
const roundMm = 9;
/** Rows that weigh less add nothing to a sum in double precision. */
const leastWeight = 1e-16;

/**
 * One-sided structure tensor along a line at eta = etaMm of the strip.
 *
 * Products are summed with a half-Gaussian into the board and a Gaussian along the line; the
 * direction of least change is theta = atan2(2 Jxy, Jxx - Jyy) / 2 + 90 deg. Its standard error is
 * that of `grainAngleSe`, for a window at an edge: the scatter s of the blocks' double-angle vectors
 * about the window's own, s^2 = sum w^2 e^2 / (4 |sum w q|^2), e the component of q = (Jxx - Jyy, 2 Jxy)
 * across the mean; and what is not lines but fibre, times how far off it may point:
 * se^2 = (2.8 s)^2 + (d max(0, 2 / kept - 1))^2 + (0.3 deg)^2.
 *
 * @param side -1 for side A (eta smaller), +1 for side B.
 */
export function sideField(
  blocks: CarriedBlocks,
  reachAMm: number,
  etaMm: number,
  side: -1 | 1,
  window: SideWindow = defaultSideWindow,
): SideField {
  const { width: n, stepMm } = blocks;
  const slopes = new SlopeSums(n);
  const scatter = new ScatterSums(n);
  const scales = depthShares.map((share) => ({ share, slopes: new SlopeSums(n) }));
  eachRow(blocks, reachAMm, etaMm, side, window, (row, depthMm) => {
    const weight = depthWeight(depthMm, window.acrossSigmaMm);
    slopes.addRow(blocks, row, weight);
    scatter.addRow(blocks, row, weight);
    for (const scale of scales) {
      const scaled = depthWeight(depthMm, scale.share * window.acrossSigmaMm);
      if (scaled > leastWeight) scale.slopes.addRow(blocks, row, scaled);
    }
  });
  const kernel = gaussianKernel(window.alongSigmaMm / stepMm);
  return {
    ...fieldOf(slopes.along(kernel), scatter, spreadAlong(slopes, scatter, stepMm), stepMm, kernel),
    scalesRad: scales.map((scale) => anglesOf(scale.slopes.along(kernel))),
  };
}

/** The direction alone of `sideField`, for those who ask no more: a third of the work. */
export function sideAngles(
  blocks: BlockTensor,
  reachAMm: number,
  etaMm: number,
  side: -1 | 1,
  window: SideWindow,
): SideAngles {
  const slopes = new SlopeSums(blocks.width);
  eachRow(blocks, reachAMm, etaMm, side, window, (row, depthMm) =>
    slopes.addRow(blocks, row, depthWeight(depthMm, window.acrossSigmaMm)),
  );
  const kernel = gaussianKernel(window.alongSigmaMm / blocks.stepMm);
  return { stepMm: blocks.stepMm, angleRad: anglesOf(slopes.along(kernel)) };
}

const depthWeight = (depthMm: number, sigmaMm: number) => Math.exp(-0.5 * (depthMm / sigmaMm) ** 2);

/** Every row of blocks whose middle lies within the window's depths. */
function eachRow(
  { height, stepMm }: BlockTensor,
  reachAMm: number,
  etaMm: number,
  side: -1 | 1,
  { clearMm, deepestMm }: SideWindow,
  take: (row: number, depthMm: number) => void,
): void {
  for (let row = 0; row < height; row++) {
    const depthMm = side * ((row + 0.5) * stepMm - reachAMm - etaMm);
    if (depthMm >= clearMm && depthMm <= deepestMm) take(row, depthMm);
  }
}

function fieldOf(
  { q1, q2 }: SlopeSums,
  scatter: ScatterSums,
  spreadRad: Float64Array,
  stepMm: number,
  kernel: Float64Array,
): Omit<SideField, 'scalesRad'> {
  const n = q1.length;
  const { total, q1q1, q2q2, q1q2, before } = scatter.along(kernel);
  const norm = smoothedRow(new Float64Array(n).fill(1), kernel);
  const angleSeRad = new Float64Array(n);
  const coherence = new Float64Array(n);
  const energy = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const size = Math.sqrt(q1[i] * q1[i] + q2[i] * q2[i]) + 1e-12;
    const cos = q1[i] / size;
    const sin = q2[i] / size;
    const across = sin * sin * q1q1[i] + cos * cos * q2q2[i] - 2 * sin * cos * q1q2[i];
    const scattered = Math.sqrt(Math.max(0, across)) / (2 * size);
    const fibre = Math.max(0, (linesAlone * before[i]) / (total[i] + 1e-12) - 1);
    const se = Math.hypot(scatterGain * scattered, spreadRad[i] * fibre, floorRad);
    angleSeRad[i] = Math.min(Math.PI / 4, se);
    coherence[i] = size / (total[i] + 1e-12);
    energy[i] = Math.sqrt(total[i] / norm[i]);
  }
  return { stepMm, angleRad: anglesOf({ q1, q2 }), angleSeRad, coherence, energy };
}

/** Spread of the directions round every place of the line, rad. */
function spreadAlong(slopes: SlopeSums, { total }: ScatterSums, stepMm: number): Float64Array {
  const kernel = gaussianKernel(roundMm / stepMm);
  const { q1, q2 } = slopes.along(kernel);
  return smoothedRow(total, kernel).map((energy, i) => {
    const coherence = Math.hypot(q1[i], q2[i]) / (energy + 1e-12);
    return directionSpreadRad(coherence);
  });
}

/** Direction of least change, a right angle from that of the slopes, in (-pi/2, pi/2]. */
function anglesOf({ q1, q2 }: Pick<SlopeSums, 'q1' | 'q2'>): Float64Array {
  const angleRad = new Float64Array(q1.length);
  for (let i = 0; i < q1.length; i++) {
    const angle = 0.5 * Math.atan2(q2[i], q1[i]);
    angleRad[i] = angle > 0 ? angle - Math.PI / 2 : angle + Math.PI / 2;
  }
  return angleRad;
}
