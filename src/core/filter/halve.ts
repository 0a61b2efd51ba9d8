import { SeamgrainError } from '../errors.js';
import { createPlane, type Plane } from '../image/plane.js';
import { reflectIndex } from './reflectIndex.js';

/** Variance of the smoothing that `halve` brings along each axis, full-size px squared. */
export const halveVariancePx2 = 0.75;

/**
 * Halves a plane with the weights 1 3 3 1 along both axes; mirrored borders.
 *
 * Unlike the mean of 2 x 2 it lets next to no fine noise fold into coarse lines (response
 * cos^3(w / 2) instead of cos(w / 2)). New pixel (X, Y) is centred on old pixels 2X, 2X + 1.
 *
 * @param source plane of at least 2 x 2 pixels; an odd last row or column serves as border only.
 * @returns plane of floor(width / 2) x floor(height / 2) pixels.
 * @throws SeamgrainError `cannotDo` when nothing would be left.
 */
export function halve(source: Plane): Plane {
  const width = source.width >> 1;
  const height = source.height >> 1;
  if (width < 1 || height < 1) {
    throw new SeamgrainError(
      'cannotDo',
      `A picture of ${source.width} x ${source.height} px cannot be halved.`,
      'Use a larger picture.',
    );
  }
  const out = createPlane(width, height);
  const row = new Float64Array(2 * width + 2);
  for (let Y = 0; Y < height; Y++) {
    sumRows(source, 2 * Y, row);
    for (let X = 0, i = Y * width; X < width; X++, i++) {
      const p = 2 * X;
      out.data[i] = (row[p] + row[p + 3] + 3 * (row[p + 1] + row[p + 2])) / 64;
    }
  }
  return out;
}

/** row[x + 1] = rows y - 1 .. y + 2 weighted 1 3 3 1, for x from -1 to the last needed. */
function sumRows({ data, width, height }: Plane, y: number, row: Float64Array): void {
  const above = reflectIndex(y - 1, height) * width;
  const first = y * width;
  const second = first + width;
  const below = reflectIndex(y + 2, height) * width;
  const inside = Math.min(width, row.length - 1);
  for (let x = 0; x < inside; x++) {
    row[x + 1] = data[above + x] + data[below + x] + 3 * (data[first + x] + data[second + x]);
  }
  row[0] = row[1];
  if (inside < row.length - 1) row[row.length - 1] = row[row.length - 2];
}
