import type { Plane } from '../image/plane.js';
import type { GrainWay } from './grainWay.js';

/**
 * Averages every pixel of a block along the block's way. Neighbours share most of what they read:
 * blocks three wide are taken row by row, others in squares of four.
 *
 * @param from the block's first pixel in the plane. @param columns, rows its size, px.
 */
export function averageBlock(
  { width, data }: Plane,
  way: GrainWay,
  from: number,
  columns: number,
  rows: number,
  out: Float32Array,
): void {
  let i = from;
  const end = from + rows * width;
  if (columns === 3) {
    for (; i < end; i += width) averageThree(data, width, way, i, out);
    return;
  }
  for (; i + width < end; i += 2 * width) {
    let x = 0;
    for (; x + 2 <= columns; x += 2) averageFour(data, width, way, i + x, out);
    if (x === columns) continue;
    averageOne(data, width, way, i + x, out);
    averageOne(data, width, way, i + x + width, out);
  }
  if (i < end) for (let x = 0; x < columns; x++) averageOne(data, width, way, i + x, out);
}

function averageOne(
  data: Float32Array,
  width: number,
  { count, offset, corner, total }: GrainWay,
  i: number,
  out: Float32Array,
): void {
  let sum = data[i];
  for (let n = 0, c = 0; n < count; n++, c += 4) {
    const j = i + offset[n];
    const k = j + width;
    sum += corner[c] * data[j] + corner[c + 1] * data[j + 1];
    sum += corner[c + 2] * data[k] + corner[c + 3] * data[k + 1];
  }
  out[i] = sum / total;
}

/** Three in a row. */
function averageThree(
  data: Float32Array,
  width: number,
  { count, offset, corner, total }: GrainWay,
  i: number,
  out: Float32Array,
): void {
  let first = data[i];
  let second = data[i + 1];
  let third = data[i + 2];
  for (let n = 0, c = 0; n < count; n++, c += 4) {
    const upperLeft = corner[c];
    const upperRight = corner[c + 1];
    const lowerLeft = corner[c + 2];
    const lowerRight = corner[c + 3];
    const j = i + offset[n];
    const k = j + width;
    const u1 = data[j + 1];
    const u2 = data[j + 2];
    const l1 = data[k + 1];
    const l2 = data[k + 2];
    first += upperLeft * data[j] + upperRight * u1 + lowerLeft * data[k] + lowerRight * l1;
    second += upperLeft * u1 + upperRight * u2 + lowerLeft * l1 + lowerRight * l2;
    third += upperLeft * u2 + upperRight * data[j + 3] + lowerLeft * l2 + lowerRight * data[k + 3];
  }
  out[i] = first / total;
  out[i + 1] = second / total;
  out[i + 2] = third / total;
}

/** Two in a row and the two below them. */
function averageFour(
  data: Float32Array,
  width: number,
  { count, offset, corner, total }: GrainWay,
  i: number,
  out: Float32Array,
): void {
  const below = i + width;
  let first = data[i];
  let second = data[i + 1];
  let third = data[below];
  let fourth = data[below + 1];
  for (let n = 0, c = 0; n < count; n++, c += 4) {
    const upperLeft = corner[c];
    const upperRight = corner[c + 1];
    const lowerLeft = corner[c + 2];
    const lowerRight = corner[c + 3];
    const j = i + offset[n];
    const k = j + width;
    const l = k + width;
    const u1 = data[j + 1];
    const m0 = data[k];
    const m1 = data[k + 1];
    const m2 = data[k + 2];
    const l1 = data[l + 1];
    first += upperLeft * data[j] + upperRight * u1 + lowerLeft * m0 + lowerRight * m1;
    second += upperLeft * u1 + upperRight * data[j + 2] + lowerLeft * m1 + lowerRight * m2;
    third += upperLeft * m0 + upperRight * m1 + lowerLeft * data[l] + lowerRight * l1;
    fourth += upperLeft * m1 + upperRight * m2 + lowerLeft * l1 + lowerRight * data[l + 2];
  }
  out[i] = first / total;
  out[i + 1] = second / total;
  out[below] = third / total;
  out[below + 1] = fourth / total;
}
