import { gaussianBlur } from '../../filter/gaussianBlur.js';
import type { BlockTensor } from '../../grain/blockTensor.js';
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
 * alone, for all lines along x at once (for one line see `sideField`).
 *
 * @param side -1 the wood above the edge, +1 the wood below.
 */
export function sideDirections(blocks: BlockTensor, side: -1 | 1): SideDirections {
  const { width, height, stepMm, jxx, jxy, jyy } = blocks;
  const { alongSigmaMm, clearMm, deepestMm } = defaultSideWindow;
  const kernel: { readonly at: number; readonly w: number }[] = [];
  for (let at = 0; (at + 0.5) * stepMm < deepestMm; at++) {
    const depth = (at + 0.5) * stepMm;
    if (depth >= clearMm) kernel.push({ at, w: Math.exp(-0.5 * (depth / acrossSigmaMm) ** 2) });
  }
  const edges = height + 1;
  const q1 = new Float32Array(width * edges);
  const q2 = new Float32Array(width * edges);
  for (let k = 0; k < edges; k++) {
    for (const { at, w } of kernel) {
      // Where the panel ends the window ends too; its last block stands for what is missing.
      const j = Math.min(height - 1, Math.max(0, side < 0 ? k - 1 - at : k + at));
      for (let i = 0, from = j * width, to = k * width; i < width; i++, from++, to++) {
        q1[to] += w * (jxx[from] - jyy[from]);
        q2[to] += w * 2 * jxy[from];
      }
    }
  }
  return { columns: width, edges, ...unit(q1, q2, width, edges, alongSigmaMm / stepMm) };
}

function unit(q1: Float32Array, q2: Float32Array, width: number, height: number, sigma: number) {
  const cos = new Float32Array(q1.length);
  const sin = new Float32Array(q1.length);
  const row = { width, height: 1 };
  for (let k = 0; k < height; k++) {
    const [from, to] = [k * width, (k + 1) * width];
    const a = gaussianBlur({ ...row, data: q1.subarray(from, to) }, sigma).data;
    const b = gaussianBlur({ ...row, data: q2.subarray(from, to) }, sigma).data;
    for (let i = 0; i < width; i++) {
      const across = 0.5 * Math.atan2(b[i], a[i]);
      cos[from + i] = -Math.sin(across);
      sin[from + i] = Math.cos(across);
    }
  }
  return { cos, sin };
}
