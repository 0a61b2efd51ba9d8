import { gaussianBlur } from '../filter/gaussianBlur.js';
import type { BlockTensor } from './blockTensor.js';
import { directionSpreadRad } from './directionSpreadRad.js';

/** Fitted on drawn faces (seeds 430 to 434 of the nine settings); held out from the bench. */
const scatterGain = 3.7;
/** Energy of lines alone after the carry over that before: slopes are taken finer. */
const linesAlone = 1.7;
const floorRad = 0.07 * (Math.PI / 180);
/** How far round a cell its neighbours' directions are looked at, mm. */
const roundMm = 9;

/**
 * Standard error of every grain angle: what the window itself says of its own reliability.
 *
 * se^2 = (3.7 s)^2 + (d e)^2 + (0.07 deg)^2 with
 * - s the scatter of the blocks' double-angle vectors about the window's mean (blocks along one
 *   line are not independent: hence the factor),
 * - e = max(0, 1.7 / kept - 1), kept the energy of the slopes after the picture was carried along the
 *   grain over that before: pores and fibre end after millimetres and fade, ring lines stay. So e is
 *   what is not lines, and it points along the board,
 * - d = sqrt((1 - coherence) / 2), the spread of the lines' directions within 9 mm: how far off
 *   the ring line the fibre may point there. Faint lines that run straight are read well.
 *
 * @param blocks products of the carried picture before, @param smooth after smoothing over windowMm.
 * @param uncarried the same as smooth, of the picture before it was carried.
 */
export function grainAngleSe(
  blocks: BlockTensor,
  smooth: BlockTensor,
  uncarried: BlockTensor,
  windowMm: number,
): Float32Array {
  const { width, height, stepMm } = blocks;
  const sigma = windowMm / stepMm;
  const [aa, bb, ab] = squares(blocks, sigma / Math.SQRT2);
  const spread = directionSpread(smooth);
  const share = 1 / (4 * Math.PI * sigma * sigma);
  const out = new Float32Array(width * height);
  for (let i = 0; i < out.length; i++) {
    const size = Math.hypot(smooth.jxx[i] - smooth.jyy[i], 2 * smooth.jxy[i]) + 1e-15;
    const cos = (smooth.jxx[i] - smooth.jyy[i]) / size;
    const sin = (2 * smooth.jxy[i]) / size;
    const across = Math.max(0, aa[i] * sin * sin + bb[i] * cos * cos - 2 * ab[i] * sin * cos);
    const scatter = Math.sqrt(share * across) / (2 * size);
    const before = uncarried.jxx[i] + uncarried.jyy[i];
    const fibre = Math.max(0, (linesAlone * before) / (smooth.jxx[i] + smooth.jyy[i] + 1e-15) - 1);
    const se = Math.hypot(scatterGain * scatter, spread[i] * fibre, floorRad);
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
    return directionSpreadRad(coherence);
  });
}

function squares(blocks: BlockTensor, sigma: number): Float32Array[] {
  const { width, height, jxx, jxy, jyy } = blocks;
  const aa = jxx.map((xx, i) => (xx - jyy[i]) ** 2);
  const bb = jxy.map((xy) => 4 * xy * xy);
  const ab = jxx.map((xx, i) => 2 * (xx - jyy[i]) * jxy[i]);
  return [aa, bb, ab].map((data) => gaussianBlur({ width, height, data }, sigma).data);
}
