import { gaussianBlur } from '../filter/gaussianBlur.js';
import type { BlockTensor } from './blockTensor.js';

/** Fitted on drawn faces (seeds 400 to 426 of the nine settings); held out from the bench. */
const scatterGain = 4;
const paleGain = 0.5;
const floorRad = 0.07 * (Math.PI / 180);
/** How far round a cell its neighbours' directions are looked at, mm. */
const roundMm = 9;

/**
 * Standard error of every grain angle: what the window itself says of its own reliability.
 *
 * se^2 = (4 s)^2 + (0.5 d e)^2 + (0.07 deg)^2 with
 * - s the scatter of the blocks' double-angle vectors about the window's mean (blocks along one
 *   line are not independent: hence the factor),
 * - e = max(0, median energy / energy - 1): pale wood between ring lines, where only the fibre is
 *   seen, and it points along the board,
 * - d = sqrt((1 - coherence) / 2), the spread of the lines' directions within 9 mm: how far off
 *   the ring line the fibre may point there. Pale wood among straight lines is read well.
 *
 * @param blocks products before, @param smooth after smoothing over windowMm.
 */
export function grainAngleSe(
  blocks: BlockTensor,
  smooth: BlockTensor,
  windowMm: number,
): Float32Array {
  const { width, height, stepMm } = blocks;
  const sigma = windowMm / stepMm;
  const [aa, bb, ab] = squares(blocks, sigma / Math.SQRT2);
  const spread = directionSpread(smooth);
  const median = medianEnergy(smooth);
  const share = 1 / (4 * Math.PI * sigma * sigma);
  const out = new Float32Array(width * height);
  for (let i = 0; i < out.length; i++) {
    const size = Math.hypot(smooth.jxx[i] - smooth.jyy[i], 2 * smooth.jxy[i]) + 1e-15;
    const cos = (smooth.jxx[i] - smooth.jyy[i]) / size;
    const sin = (2 * smooth.jxy[i]) / size;
    const across = Math.max(0, aa[i] * sin * sin + bb[i] * cos * cos - 2 * ab[i] * sin * cos);
    const scatter = Math.sqrt(share * across) / (2 * size);
    const pale = Math.max(0, median / (smooth.jxx[i] + smooth.jyy[i] + 1e-15) - 1);
    const se = Math.hypot(scatterGain * scatter, paleGain * spread[i] * pale, floorRad);
    out[i] = Math.min(Math.PI / 2, se);
  }
  return out;
}

/** Spread of the directions round every block, rad. */
function directionSpread(smooth: BlockTensor): Float32Array {
  const { width, height, stepMm } = smooth;
  const [jxx, jyy, jxy] = [smooth.jxx, smooth.jyy, smooth.jxy].map(
    (data) => gaussianBlur({ width, height, data }, roundMm / stepMm).data,
  );
  return jxx.map((xx, i) => {
    const coherence = Math.hypot(xx - jyy[i], 2 * jxy[i]) / (xx + jyy[i] + 1e-15);
    return Math.sqrt(Math.max(0, 1 - coherence) / 2);
  });
}

function squares(blocks: BlockTensor, sigma: number): Float32Array[] {
  const { width, height, jxx, jxy, jyy } = blocks;
  const aa = jxx.map((xx, i) => (xx - jyy[i]) ** 2);
  const bb = jxy.map((xy) => 4 * xy * xy);
  const ab = jxx.map((xx, i) => 2 * (xx - jyy[i]) * jxy[i]);
  return [aa, bb, ab].map((data) => gaussianBlur({ width, height, data }, sigma).data);
}

function medianEnergy({ jxx, jyy }: BlockTensor): number {
  const sorted = jxx.map((xx, i) => xx + jyy[i]).sort();
  return sorted[sorted.length >> 1];
}
