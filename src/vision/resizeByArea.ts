import { linearLightTable } from '../core/colour/linearLightTable.js';
import type { RgbImage } from '../core/image/rgbImage.js';
import { type AreaSpans, areaSpans } from './areaSpans.js';
import { srgbLevelSteps, srgbLevelTable } from './srgbLevelTable.js';

/**
 * Makes a picture smaller: each new pixel is the mean of the light that fell on its area.
 *
 * Averaging whole areas keeps fine grain from turning into false lines (aliasing), and
 * averaging light instead of sRGB levels keeps dark pores as dark as they look from afar.
 * The same code serves Node and the browser, so both work on the same pixels.
 * @param photo sRGB, 8 bits
 * @param width new width, px, 1 to the photo's
 * @param height new height, px, 1 to the photo's
 * @returns a new picture, or the photo itself when nothing changes
 */
export function resizeByArea(photo: RgbImage, width: number, height: number): RgbImage {
  if (width === photo.width && height === photo.height) return photo;
  const across = areaSpans(photo.width, width);
  const down = areaSpans(photo.height, height);
  const light = linearLightTable(srgbLevelSteps);
  const level = srgbLevelTable();
  const data = new Uint8Array(3 * width * height);
  const narrowRow = new Float32Array(3 * width);
  const sum = new Float32Array(3 * width);
  let narrowedRow = -1;
  for (let y = 0; y < height; y++) {
    sum.fill(0.5);
    for (let row = down.first[y]; row <= down.last[y]; row++) {
      if (row !== narrowedRow) narrow(photo, row, across, light, narrowRow);
      narrowedRow = row;
      const share = rowShare(down, y, row);
      for (let i = 0; i < sum.length; i++) sum[i] += share * narrowRow[i];
    }
    const start = 3 * width * y;
    for (let i = 0; i < sum.length; i++) data[start + i] = level[sum[i] | 0];
  }
  return { width, height, data };
}

function rowShare(down: AreaSpans, y: number, row: number): number {
  if (row === down.first[y]) return down.firstShare[y];
  return row === down.last[y] ? down.lastShare[y] : down.middleShare;
}

/** Averages one row of the photo along x into `narrowRow`, in linear light. */
function narrow(
  { width, data }: RgbImage,
  row: number,
  { first, last, firstShare, lastShare, middleShare }: AreaSpans,
  light: Float32Array,
  narrowRow: Float32Array,
): void {
  const start = 3 * width * row;
  for (let x = 0, to = 0; x < first.length; x++, to += 3) {
    let at = start + 3 * first[x];
    const end = start + 3 * last[x];
    const share = firstShare[x];
    let red = share * light[data[at]];
    let green = share * light[data[at + 1]];
    let blue = share * light[data[at + 2]];
    for (at += 3; at < end; at += 3) {
      red += middleShare * light[data[at]];
      green += middleShare * light[data[at + 1]];
      blue += middleShare * light[data[at + 2]];
    }
    if (at === end) {
      const rest = lastShare[x];
      red += rest * light[data[at]];
      green += rest * light[data[at + 1]];
      blue += rest * light[data[at + 2]];
    }
    narrowRow[to] = red;
    narrowRow[to + 1] = green;
    narrowRow[to + 2] = blue;
  }
}
