import { gradientRows } from '../filter/gradientRows.js';
import type { Plane } from '../image/plane.js';
import { replicateBorder } from '../image/replicateBorder.js';

/**
 * Gradient products averaged over square blocks, not yet smoothed: block (i, j) covers
 * stepMm x stepMm with its centre at ((i + 0.5) stepMm, (j + 0.5) stepMm).
 */
export interface BlockTensor {
  readonly width: number;
  readonly height: number;
  readonly stepMm: number;
  readonly jxx: Float32Array;
  readonly jxy: Float32Array;
  readonly jyy: Float32Array;
}

/** How many blocks at the picture's edge take what the next ones inside say. */
export interface RimBlocks {
  readonly columns: number;
  readonly rows: number;
}

/** Slopes of 0.5 mm reach 1.5 mm, the second half of that hardly. */
const usualRim: RimBlocks = { columns: 1, rows: 1 };

/**
 * Averages gradient products over blocks of about a millimetre: the raw material of every grain
 * direction, kept unsmoothed so that a window may end exactly at a seam.
 *
 * Slopes at the picture's edge feel the wood mirrored beyond it, which turned steep lines by up to 2.5
 * deg: blocks there (`rim`) take what the next ones inside say.
 *
 * @param sigmaPx scale of the slopes, px.
 * @param blockPx side of a block, whole pixels; a rest narrower than a block is left out.
 * @param pxPerMm scale of the plane.
 */
export function blockTensor(
  source: Plane,
  sigmaPx: number,
  blockPx: number,
  pxPerMm: number,
  rim = usualRim,
): BlockTensor {
  const width = Math.floor(source.width / blockPx);
  const height = Math.floor(source.height / blockPx);
  const size = width * height;
  const jxx = new Float32Array(size);
  const jxy = new Float32Array(size);
  const jyy = new Float32Array(size);
  const blocks = { width, height, stepMm: blockPx / pxPerMm, jxx, jxy, jyy };
  gradientRows(source, sigmaPx, (y, gx, gy) => {
    const row = Math.floor(y / blockPx);
    if (row < height) addRow(blocks, row * width, gx, gy, blockPx);
  });
  for (const data of [jxx, jxy, jyy]) {
    replicateBorder({ width, height, data }, rim.columns, rim.rows);
  }
  return blocks;
}

/** Adds the products of one row of pixels to the blocks that it crosses. */
function addRow(
  { width, jxx, jxy, jyy }: BlockTensor,
  firstBlock: number,
  gx: Float32Array,
  gy: Float32Array,
  blockPx: number,
): void {
  const scale = 1 / (blockPx * blockPx);
  for (let block = firstBlock, i = 0; block < firstBlock + width; block++) {
    let xx = 0;
    let xy = 0;
    let yy = 0;
    for (const end = i + blockPx; i < end; i++) {
      const a = gx[i];
      const b = gy[i];
      xx += a * a;
      xy += a * b;
      yy += b * b;
    }
    jxx[block] += xx * scale;
    jxy[block] += xy * scale;
    jyy[block] += yy * scale;
  }
}
