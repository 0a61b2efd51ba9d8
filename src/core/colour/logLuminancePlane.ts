import { createPlane, type Plane } from '../image/plane.js';
import type { RgbImage } from '../image/rgbImage.js';
import { luminanceRows } from './linearLuminancePlane.js';

/** The table has 2^stepBits entries an octave: the log is off by at most 2.5e-4. */
const stepBits = 11;
const shift = 23 - stepBits;
const floatBits = (value: number) => new Int32Array(Float32Array.of(value).buffer)[0];

/**
 * Natural logarithm of each pixel's luminance: a shadow over half the board shifts this plane
 * by a constant and leaves the grain's contrast (dY / Y) alone.
 *
 * log(max(Y, floorY)), read from a table over the leading bits of the 32-bit float; off by at
 * most 2.5e-4, a thirtieth of one 8-bit step in mid grey.
 *
 * @param image sRGB picture.
 * @param floorY luminance below which all is called equally dark, above 0, default 1/512
 *   (about 6 of 255 sRGB levels).
 * @returns plane of the same size, ln(floorY) to 0.
 */
export function logLuminancePlane(image: RgbImage, floorY = 1 / 512): Plane {
  const plane = createPlane(image.width, image.height);
  const firstStep = floatBits(floorY) >> shift;
  const table = logTable(firstStep, (floatBits(1.001) >> shift) - firstStep + 1);
  // Row by row, so that the luminances are still at hand when they are looked up.
  const luminance = new Float32Array(image.width);
  const bits = new Int32Array(luminance.buffer);
  const readRow = luminanceRows(image);
  for (let y = 0, out = 0; y < image.height; y++) {
    readRow(y, luminance);
    for (let x = 0; x < bits.length; x++) {
      plane.data[out++] = table[Math.max((bits[x] >> shift) - firstStep, 0)];
    }
  }
  return plane;
}

function logTable(firstStep: number, length: number): Float32Array {
  const table = new Float32Array(length);
  const middle = new Float32Array(1);
  const middleBits = new Int32Array(middle.buffer);
  for (let i = 0; i < length; i++) {
    middleBits[0] = ((firstStep + i) << shift) + (1 << (shift - 1));
    table[i] = Math.log(middle[0]);
  }
  return table;
}
