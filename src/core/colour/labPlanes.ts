import { SeamgrainError } from '../errors.js';
import { createPlane, type Plane } from '../image/plane.js';
import type { RgbImage } from '../image/rgbImage.js';
import { linearLightTable } from './linearLightTable.js';
import { linearRgbToLab } from './linearRgbToLab.js';

/** L*, a* and b* (D65) of a picture averaged over squares of `reduceBy` pixels. */
export interface LabPlanes {
  readonly lightness: Plane;
  readonly a: Plane;
  readonly b: Plane;
  readonly reduceBy: number;
}

/**
 * The colour of the board in patches, for steps of colour across a joint.
 *
 * Each patch is the mean of reduceBy x reduceBy pixels in linear light, then L*a*b*: what the
 * eye sees from far enough that a patch is one spot. A rest narrower than a patch at the right
 * and bottom is left out. Patch (X, Y) covers pixels X reduceBy .. (X + 1) reduceBy.
 *
 * @param image sRGB picture.
 * @param reduceBy side of a patch, whole pixels, 1 or more.
 * @returns three planes of floor(width / reduceBy) x floor(height / reduceBy) patches.
 * @throws SeamgrainError `cannotDo` when no patch fits in the picture.
 */
export function labPlanes(image: RgbImage, reduceBy: number): LabPlanes {
  const width = Math.floor(image.width / reduceBy);
  const height = Math.floor(image.height / reduceBy);
  if (!Number.isInteger(reduceBy) || reduceBy < 1 || width < 1 || height < 1) {
    throw new SeamgrainError(
      'cannotDo',
      `No colour patch of ${reduceBy} px fits in a picture of ${image.width} x ${image.height} px.`,
      'Use a larger picture or smaller patches.',
    );
  }
  const lightness = createPlane(width, height);
  const a = createPlane(width, height);
  const b = createPlane(width, height);
  const sums = new Float64Array(3 * width);
  const light = linearLightTable();
  const scale = 1 / (reduceBy * reduceBy);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    for (let row = y * reduceBy; row < (y + 1) * reduceBy; row++) {
      addRow(sums, image, row, reduceBy, light);
    }
    for (let x = 0, i = y * width; x < width; x++, i++) {
      const lab = linearRgbToLab(
        sums[3 * x] * scale,
        sums[3 * x + 1] * scale,
        sums[3 * x + 2] * scale,
      );
      lightness.data[i] = lab[0];
      a.data[i] = lab[1];
      b.data[i] = lab[2];
    }
  }
  return { lightness, a, b, reduceBy };
}

/** Adds one row of pixels, in linear light, to the sums of the patches it crosses. */
function addRow(
  sums: Float64Array,
  image: RgbImage,
  row: number,
  reduceBy: number,
  light: Float32Array,
): void {
  const source = image.data;
  let j = 3 * row * image.width;
  for (let s = 0; s < sums.length; s += 3) {
    let red = 0;
    let green = 0;
    let blue = 0;
    for (let end = j + 3 * reduceBy; j < end; j += 3) {
      red += light[source[j]];
      green += light[source[j + 1]];
      blue += light[source[j + 2]];
    }
    sums[s] += red;
    sums[s + 1] += green;
    sums[s + 2] += blue;
  }
}
