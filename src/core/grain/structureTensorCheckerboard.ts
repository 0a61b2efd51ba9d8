import { gaussianDerivativeKernel } from '../filter/gaussianDerivativeKernel.js';
import { gaussianKernel } from '../filter/gaussianKernel.js';
import { reflectIndex } from '../filter/reflectIndex.js';
import type { Plane } from '../image/plane.js';
import { createTensorField } from './createTensorField.js';
import type { TensorField } from './tensorField.js';

const radius = 4;

/**
 * Gradient products averaged over the pixels of one colour of a checkerboard, in 4 x 4 px blocks.
 *
 * After a Gaussian of sigma about 1 px hardly anything is left that the other pixels could add
 * (the error against truth grows by 1 %), and half the products need not be computed. Four rows
 * at a time: twelve rows, read once, are filtered down the columns, then along the rows. The
 * rows between are 64-bit because converting costs more than it saves.
 *
 * @param source luminance or its logarithm.
 * @param sigmaPx sigma of the Gaussian derivatives, px, 0.875 to 1.125 (kernels of 9 taps).
 * @returns field with stepPx = 4.
 */
export function structureTensorCheckerboard(source: Plane, sigmaPx: number): TensorField {
  const field = createTensorField(source, 4);
  const { width, height, data } = source;
  const smooth = gaussianKernel(sigmaPx, radius).subarray(radius);
  const slope = gaussianDerivativeKernel(sigmaPx, radius).subarray(radius);
  const pitch = width + 2 * radius;
  const smoothed = new Float64Array(4 * pitch);
  const sloped = new Float64Array(4 * pitch);
  const starts = new Int32Array(4 + 2 * radius);
  for (let y = 0; y < 4 * field.height; y += 4) {
    for (let i = 0; i < starts.length; i++) {
      starts[i] = reflectIndex(y + i - radius, height) * width;
    }
    filterColumns(data, starts, width, smoothed, sloped, smooth, slope);
    for (let row = 0; row < 4; row++) {
      const start = row * pitch;
      mirrorEnds(smoothed, start, width);
      mirrorEnds(sloped, start, width);
      const firstBlock = (y / 4) * field.width;
      addRow(field, firstBlock, smoothed, sloped, start + (row % 2), smooth, slope);
    }
  }
  for (const sums of [field.jxx, field.jxy, field.jyy]) {
    for (let i = 0; i < sums.length; i++) sums[i] *= 1 / 8;
  }
  return field;
}

function mirrorEnds(rows: Float64Array, start: number, width: number): void {
  for (let i = 0; i < radius; i++) {
    rows[start + i] = rows[start + radius + reflectIndex(i - radius, width)];
    rows[start + radius + width + i] = rows[start + radius + reflectIndex(width + i, width)];
  }
}

/** Twelve rows in; four rows smoothed and four rows of slope downward out. */
function filterColumns(
  source: Float32Array,
  starts: Int32Array,
  width: number,
  smoothed: Float64Array,
  sloped: Float64Array,
  smooth: Float64Array,
  slope: Float64Array,
): void {
  const g0 = smooth[0];
  const g1 = smooth[1];
  const g2 = smooth[2];
  const g3 = smooth[3];
  const g4 = smooth[4];
  const d1 = slope[1];
  const d2 = slope[2];
  const d3 = slope[3];
  const d4 = slope[4];
  const o0 = starts[0];
  const o1 = starts[1];
  const o2 = starts[2];
  const o3 = starts[3];
  const o4 = starts[4];
  const o5 = starts[5];
  const o6 = starts[6];
  const o7 = starts[7];
  const o8 = starts[8];
  const o9 = starts[9];
  const o10 = starts[10];
  const o11 = starts[11];
  const pitch = width + 2 * radius;
  for (let x = 0, i = radius; x < width; x++, i++) {
    const a0 = source[o0 + x];
    const a1 = source[o1 + x];
    const a2 = source[o2 + x];
    const a3 = source[o3 + x];
    const a4 = source[o4 + x];
    const a5 = source[o5 + x];
    const a6 = source[o6 + x];
    const a7 = source[o7 + x];
    const a8 = source[o8 + x];
    const a9 = source[o9 + x];
    const a10 = source[o10 + x];
    const a11 = source[o11 + x];
    const j = i + pitch;
    const k = j + pitch;
    const l = k + pitch;
    smoothed[i] = g0 * a4 + g1 * (a3 + a5) + g2 * (a2 + a6) + g3 * (a1 + a7) + g4 * (a0 + a8);
    smoothed[j] = g0 * a5 + g1 * (a4 + a6) + g2 * (a3 + a7) + g3 * (a2 + a8) + g4 * (a1 + a9);
    smoothed[k] = g0 * a6 + g1 * (a5 + a7) + g2 * (a4 + a8) + g3 * (a3 + a9) + g4 * (a2 + a10);
    smoothed[l] = g0 * a7 + g1 * (a6 + a8) + g2 * (a5 + a9) + g3 * (a4 + a10) + g4 * (a3 + a11);
    sloped[i] = d1 * (a5 - a3) + d2 * (a6 - a2) + d3 * (a7 - a1) + d4 * (a8 - a0);
    sloped[j] = d1 * (a6 - a4) + d2 * (a7 - a3) + d3 * (a8 - a2) + d4 * (a9 - a1);
    sloped[k] = d1 * (a7 - a5) + d2 * (a8 - a4) + d3 * (a9 - a3) + d4 * (a10 - a2);
    sloped[l] = d1 * (a8 - a6) + d2 * (a9 - a5) + d3 * (a10 - a4) + d4 * (a11 - a3);
  }
}

/** Adds the products at every second pixel of one row to the blocks that it crosses. */
function addRow(
  { width, jxx, jxy, jyy }: TensorField,
  firstBlock: number,
  smoothed: Float64Array,
  sloped: Float64Array,
  start: number,
  smooth: Float64Array,
  slope: Float64Array,
): void {
  const g0 = smooth[0];
  const g1 = smooth[1];
  const g2 = smooth[2];
  const g3 = smooth[3];
  const g4 = smooth[4];
  const d1 = slope[1];
  const d2 = slope[2];
  const d3 = slope[3];
  const d4 = slope[4];
  for (let block = firstBlock, p = start; block < firstBlock + width; block++, p += 4) {
    const s0 = smoothed[p];
    const s1 = smoothed[p + 1];
    const s2 = smoothed[p + 2];
    const s3 = smoothed[p + 3];
    const s4 = smoothed[p + 4];
    const s5 = smoothed[p + 5];
    const s6 = smoothed[p + 6];
    const s7 = smoothed[p + 7];
    const s8 = smoothed[p + 8];
    const s9 = smoothed[p + 9];
    const s10 = smoothed[p + 10];
    const x0 = d1 * (s5 - s3) + d2 * (s6 - s2) + d3 * (s7 - s1) + d4 * (s8 - s0);
    const x1 = d1 * (s7 - s5) + d2 * (s8 - s4) + d3 * (s9 - s3) + d4 * (s10 - s2);
    const t0 = sloped[p];
    const t1 = sloped[p + 1];
    const t2 = sloped[p + 2];
    const t3 = sloped[p + 3];
    const t4 = sloped[p + 4];
    const t5 = sloped[p + 5];
    const t6 = sloped[p + 6];
    const t7 = sloped[p + 7];
    const t8 = sloped[p + 8];
    const t9 = sloped[p + 9];
    const t10 = sloped[p + 10];
    const y0 = g0 * t4 + g1 * (t3 + t5) + g2 * (t2 + t6) + g3 * (t1 + t7) + g4 * (t0 + t8);
    const y1 = g0 * t6 + g1 * (t5 + t7) + g2 * (t4 + t8) + g3 * (t3 + t9) + g4 * (t2 + t10);
    jxx[block] += x0 * x0 + x1 * x1;
    jxy[block] += x0 * y0 + x1 * y1;
    jyy[block] += y0 * y0 + y1 * y1;
  }
}
