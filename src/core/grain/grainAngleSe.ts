import { gaussianBlur } from '../filter/gaussianBlur.js';
import type { BlockTensor } from './blockTensor.js';

/** Fitted on drawn faces (seeds 501 and 502 of the nine settings); held out from the bench. */
const scatterGain = 6;
const bendReachMm = 2.4;
const paleGainRad = 1.2 * (Math.PI / 180);
const floorRad = 0.17 * (Math.PI / 180);

/**
 * Standard error of every grain angle: what the window itself says of its own reliability.
 *
 * se^2 = (6 s)^2 + (2.4 mm k)^2 + (1.2 deg e)^2 + (0.17 deg)^2 with
 * - s the scatter of the blocks' double-angle vectors about the window's mean (blocks along one
 *   line are not independent: hence the factor),
 * - k the bend, rad per mm: where lines turn fast the window's mean is not the middle's angle,
 * - e = max(0, median energy / energy - 1): pale wood between ring lines, where only the fibre is
 *   seen, and it points along the board.
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
  const median = medianEnergy(smooth);
  const share = 1 / (4 * Math.PI * sigma * sigma);
  const reach = Math.max(1, Math.round(3 / stepMm));
  const out = new Float32Array(width * height);
  const double = (i: number) => Math.atan2(2 * smooth.jxy[i], smooth.jxx[i] - smooth.jyy[i]);
  const turn = (i: number, j: number) => {
    const d = (double(i) - double(j)) / 2;
    return d - Math.PI * Math.round(d / Math.PI);
  };
  for (let y = 0; y < height; y++) {
    const [up, down] = [Math.max(0, y - reach), Math.min(height - 1, y + reach)];
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const [left, right] = [Math.max(0, x - reach), Math.min(width - 1, x + reach)];
      const size = Math.hypot(smooth.jxx[i] - smooth.jyy[i], 2 * smooth.jxy[i]) + 1e-15;
      const cos = (smooth.jxx[i] - smooth.jyy[i]) / size;
      const sin = (2 * smooth.jxy[i]) / size;
      const across = Math.max(0, aa[i] * sin * sin + bb[i] * cos * cos - 2 * ab[i] * sin * cos);
      const scatter = Math.sqrt(share * across) / (2 * size);
      const bendX = turn(y * width + right, y * width + left) / ((right - left) * stepMm);
      const bendY = turn(down * width + x, up * width + x) / ((down - up) * stepMm);
      const pale = Math.max(0, median / (smooth.jxx[i] + smooth.jyy[i] + 1e-15) - 1);
      out[i] = Math.min(
        Math.PI / 2,
        Math.hypot(
          scatterGain * scatter,
          bendReachMm * Math.hypot(bendX, bendY),
          paleGainRad * pale,
          floorRad,
        ),
      );
    }
  }
  return out;
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
