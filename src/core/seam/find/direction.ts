import { gaussianBlur } from '../../filter/gaussianBlur.js';
import type { BlockTensor } from '../../grain/blockTensor.js';

/** Smoothing of the grain direction, and how far to either side it is taken from, mm. */
const directionSigmaMm = 2.5;
const directionOffMm = 4;

/** Grain direction per block, as a unit vector without sign. */
export interface Direction {
  readonly blocks: BlockTensor;
  readonly blockPx: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/**
 * Grain direction of every block from the wood 4 mm above and below it, so that a seam does not
 * speak for itself.
 */
export function twoSidedDirection(blocks: BlockTensor, pxPerMm: number): Direction {
  const blockPx = Math.round(blocks.stepMm * pxPerMm);
  const { width, height, stepMm } = blocks;
  const smooth = (data: Float32Array) =>
    gaussianBlur({ width, height, data }, directionSigmaMm / stepMm).data;
  const [xx, xy, yy] = [smooth(blocks.jxx), smooth(blocks.jxy), smooth(blocks.jyy)];
  const cos = new Float32Array(width * height);
  const sin = new Float32Array(width * height);
  const off = Math.round(directionOffMm / stepMm);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const a = Math.max(0, y - off) * width + x;
      const b = Math.min(height - 1, y + off) * width + x;
      const across = 0.5 * Math.atan2(2 * (xy[a] + xy[b]), xx[a] + xx[b] - yy[a] - yy[b]);
      cos[y * width + x] = -Math.sin(across);
      sin[y * width + x] = Math.cos(across);
    }
  }
  return { blocks, blockPx, cos, sin };
}
