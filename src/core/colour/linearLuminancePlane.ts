import { createPlane, type Plane } from '../image/plane.js';
import type { RgbImage } from '../image/rgbImage.js';
import { linearLightTable } from './linearLightTable.js';
import { srgbToXyz } from './srgbPrimaries.js';

/**
 * How much light each pixel sends back, relative to white.
 *
 * The plane on which grain is measured: Y = 0.2126 R + 0.7152 G + 0.0722 B in linear light.
 *
 * @param image sRGB picture.
 * @returns plane of the same size, Y from 0 (black) to 1 (white).
 * Source: IEC 61966-2-1:1999; see `srgbToXyz`.
 */
export function linearLuminancePlane(image: RgbImage): Plane {
  const plane = createPlane(image.width, image.height);
  const readRow = luminanceRows(image);
  for (let y = 0; y < image.height; y++) {
    readRow(y, plane.data.subarray(y * image.width, (y + 1) * image.width));
  }
  return plane;
}

/** Reads the luminance of one row at a time into `out`, as `linearLuminancePlane` has it. */
export function luminanceRows(image: RgbImage): (y: number, out: Float32Array) => void {
  const [red, green, blue] = srgbToXyz[1].map((weight) => linearLightTable(weight)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  const source = image.data;
  return (y, out) => {
    for (let i = 0, j = 3 * y * image.width; i < out.length; i++, j += 3) {
      out[i] = red[source[j]] + green[source[j + 1]] + blue[source[j + 2]];
    }
  };
}
