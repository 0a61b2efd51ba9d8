import { blurAlongRows } from '../../filter/blurAlongRows.js';
import { sumShifted } from '../../filter/sumShifted.js';
import { alongLines } from '../../grain/alongLines.js';
import type { BlockTensor } from '../../grain/blockTensor.js';
import { createPlane, type Plane } from '../../image/plane.js';
import { defaultSideWindow } from '../sideField.js';

/**
 * Narrower into the board than the score's own window, mm: a line a few millimetres beside a joint of
 * two trees must not take its direction from the other tree.
 */
const acrossSigmaMm = 3;

/** Grain direction just above or just below every row of blocks, as unit vectors without sign. */
export interface SideDirections {
  readonly columns: number;
  /** Edges between rows of blocks, one more than there are rows; index edge * columns + column. */
  readonly edges: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/**
 * One-sided grain direction at every edge between two rows of blocks, from the wood on one side
 * alone, for all lines along x at once (for one line see `sideField`): the sides above and below.
 */
export function sideDirections(blocks: BlockTensor): {
  readonly above: SideDirections;
  readonly below: SideDirections;
} {
  const { width, height, stepMm, jxx, jxy, jyy } = blocks;
  const along = (data: Float32Array) =>
    blurAlongRows({ width, height, data }, defaultSideWindow.alongSigmaMm / stepMm);
  const q1 = along(jxx.map((xx, i) => xx - jyy[i]));
  const q2 = along(jxy.map((xy) => 2 * xy));
  const weights = depthWeights(stepMm);
  const side = (sign: -1 | 1): SideDirections => ({
    columns: width,
    edges: height + 1,
    ...alongLines(intoTheBoard(q1, weights, sign).data, intoTheBoard(q2, weights, sign).data),
  });
  return { above: side(-1), below: side(1) };
}

/** Weights of the rows of blocks by their place from the edge, the nearest first. */
function depthWeights(stepMm: number): Float64Array {
  const { clearMm, deepestMm } = defaultSideWindow;
  return Float64Array.from({ length: Math.ceil(deepestMm / stepMm - 0.5) }, (_, at) => {
    const depth = (at + 0.5) * stepMm;
    return depth < clearMm ? 0 : Math.exp(-0.5 * (depth / acrossSigmaMm) ** 2);
  });
}

/** Rows summed on one side of every edge. */
function intoTheBoard({ width, height, data }: Plane, weights: Float64Array, side: -1 | 1): Plane {
  const out = createPlane(width, height + 1);
  const starts = new Int32Array(weights.length);
  for (let edge = 0; edge <= height; edge++) {
    for (let at = 0; at < starts.length; at++) {
      // Where the panel ends the window ends too; its last block stands for what is missing.
      const row = Math.min(height - 1, Math.max(0, side < 0 ? edge - 1 - at : edge + at));
      starts[at] = row * width;
    }
    sumShifted(out.data, edge * width, width, data, starts, weights);
  }
  return out;
}
