import type { GradientPlanes } from '../filter/gaussianGradient.js';

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

/**
 * Averages gradient products over blocks of about a millimetre: the raw material of every grain
 * direction, kept unsmoothed so that a window may end exactly at a seam.
 *
 * @param gradient slopes of a plane, per pixel.
 * @param blockPx side of a block, whole pixels; a rest narrower than a block is left out.
 * @param pxPerMm scale of the plane.
 */
export function blockTensor(
  { width, height, gx, gy }: GradientPlanes,
  blockPx: number,
  pxPerMm: number,
): BlockTensor {
  const w = Math.floor(width / blockPx);
  const h = Math.floor(height / blockPx);
  const jxx = new Float32Array(w * h);
  const jxy = new Float32Array(w * h);
  const jyy = new Float32Array(w * h);
  const scale = 1 / (blockPx * blockPx);
  for (let y = 0; y < h * blockPx; y++) {
    const out = ((y / blockPx) | 0) * w;
    for (let bx = 0, i = y * width; bx < w; bx++) {
      let xx = 0;
      let xy = 0;
      let yy = 0;
      for (let end = i + blockPx; i < end; i++) {
        const a = gx[i];
        const b = gy[i];
        xx += a * a;
        xy += a * b;
        yy += b * b;
      }
      jxx[out + bx] += xx * scale;
      jxy[out + bx] += xy * scale;
      jyy[out + bx] += yy * scale;
    }
  }
  return { width: w, height: h, stepMm: blockPx / pxPerMm, jxx, jxy, jyy };
}
