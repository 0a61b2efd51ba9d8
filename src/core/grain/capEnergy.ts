import { nthSmallest } from '../statistics/nthSmallest.js';
import type { BlockTensor } from './blockTensor.js';

/** Wood's own lines rarely exceed their median block by more than this in energy. */
const mostOverMedian = 8;

/**
 * Scales down, in place, blocks far livelier than the wood's own, so that the black line of a
 * reveal or a knot does not turn the grain direction of everything within a window of it.
 */
export function capEnergy(blocks: BlockTensor): BlockTensor {
  const { jxx, jxy, jyy } = blocks;
  const energy = jxx.map((xx, i) => xx + jyy[i]);
  const most = mostOverMedian * nthSmallest(energy.slice(), energy.length >> 1);
  for (let i = 0; i < energy.length; i++) {
    if (energy[i] <= most || most <= 0) continue;
    const scale = most / energy[i];
    jxx[i] *= scale;
    jxy[i] *= scale;
    jyy[i] *= scale;
  }
  return blocks;
}
