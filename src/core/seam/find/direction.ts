import { gaussianBlur } from '../../filter/gaussianBlur.js';
import type { GradientPlanes } from '../../filter/gaussianGradient.js';
import { type BlockTensor, blockTensor } from '../../grain/blockTensor.js';

/** Smoothing of the grain direction, and how far to either side it is taken from, mm. */
const directionSigmaMm = 3;
const directionOffMm = 5;

/** Grain direction per block, as a unit vector without sign. */
export interface Direction {
  readonly blocks: BlockTensor;
  readonly blockPx: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/** Grain direction of every block from the wood 5 mm above and below it. */
export function twoSidedDirection(gradient: GradientPlanes, pxPerMm: number): Direction {
  const blockPx = Math.max(1, Math.round(pxPerMm));
  const blocks = blockTensor(gradient, blockPx, pxPerMm);
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
