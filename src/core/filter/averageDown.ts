import { SeamgrainError } from '../errors.js';
import { createPlane, type Plane } from '../image/plane.js';

/**
 * Shrinks a plane by a whole factor, each new pixel the mean of factor x factor old ones.
 *
 * A rest narrower than the factor at the right and bottom is left out; new pixel (X, Y) covers
 * old pixels X factor .. (X + 1) factor.
 *
 * @param source plane to shrink.
 * @param factor whole number, 1 or more.
 * @returns plane of floor(width / factor) x floor(height / factor) pixels.
 * @throws SeamgrainError `cannotDo` when nothing would be left.
 */
export function averageDown(source: Plane, factor: number): Plane {
  const width = Math.floor(source.width / factor);
  const height = Math.floor(source.height / factor);
  if (!Number.isInteger(factor) || factor < 1 || width < 1 || height < 1) {
    throw new SeamgrainError(
      'cannotDo',
      `A picture of ${source.width} x ${source.height} px cannot be shrunk by ${factor}.`,
      'Use a larger picture.',
    );
  }
  const out = createPlane(width, height);
  const sums = new Float64Array(width);
  const scale = 1 / (factor * factor);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    for (let row = y * factor; row < (y + 1) * factor; row++) {
      addRow(sums, source.data, row * source.width, factor);
    }
    for (let x = 0; x < width; x++) out.data[y * width + x] = sums[x] * scale;
  }
  return out;
}

function addRow(sums: Float64Array, data: Float32Array, from: number, factor: number): void {
  for (let x = 0, i = from; x < sums.length; x++) {
    let sum = data[i++];
    for (let k = 1; k < factor; k++) sum += data[i++];
    sums[x] += sum;
  }
}
