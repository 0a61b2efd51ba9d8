import { averageDown } from '../filter/averageDown.js';
import { gradientRows } from '../filter/gradientRows.js';
import { halve, halveVariancePx2 } from '../filter/halve.js';
import type { Plane } from '../image/plane.js';
import { createTensorField } from './createTensorField.js';
import { structureTensorCheckerboard } from './structureTensorCheckerboard.js';
import type { TensorField } from './tensorField.js';

/**
 * Gradient products averaged over factor x factor pixels, not yet smoothed further: what to
 * start from when a window must stay on one side of a joint.
 *
 * Three ways, by the scale of the derivative: near 1 px the checkerboard of pixels; from 2 px
 * up the picture is halved first (once or more) and the derivative's sigma reduced to match;
 * otherwise every pixel.
 *
 * @param source luminance or its logarithm.
 * @param gradientSigmaPx sigma of the Gaussian derivatives, px, above 0.
 * @param factor side of a block, px, 1 or more.
 * @returns field of floor(size / factor) samples with stepPx = factor.
 * @throws SeamgrainError `cannotDo` when the picture is smaller than one block.
 */
export function structureTensorBlocks(
  source: Plane,
  gradientSigmaPx: number,
  factor: number,
): TensorField {
  const halved = Math.sqrt(Math.max(0, gradientSigmaPx ** 2 - halveVariancePx2)) / 2;
  if (halved >= 0.875 && factor % 2 === 0) {
    return inFullSizeUnits(structureTensorBlocks(halve(source), halved, factor / 2));
  }
  const field = createTensorField(source, factor);
  if (gradientSigmaPx >= 0.875 && gradientSigmaPx < 1.125 && factor % 4 === 0) {
    return coarser(structureTensorCheckerboard(source, gradientSigmaPx), factor / 4);
  }
  addEveryPixel(source, gradientSigmaPx, field);
  return field;
}

/** Means of ratio x ratio samples. */
function coarser(field: TensorField, ratio: number): TensorField {
  if (ratio === 1) return field;
  const { width, height, stepPx } = field;
  const [jxx, jxy, jyy] = [field.jxx, field.jxy, field.jyy].map((data) =>
    averageDown({ width, height, data }, ratio),
  );
  return {
    width: jxx.width,
    height: jxx.height,
    stepPx: ratio * stepPx,
    jxx: jxx.data,
    jxy: jxy.data,
    jyy: jyy.data,
  };
}

/** A field measured on the picture at half size: step twice as long, slopes half as steep. */
function inFullSizeUnits(field: TensorField): TensorField {
  for (const data of [field.jxx, field.jxy, field.jyy]) {
    for (let i = 0; i < data.length; i++) data[i] *= 0.25;
  }
  return { ...field, stepPx: 2 * field.stepPx };
}

function addEveryPixel(source: Plane, sigmaPx: number, field: TensorField): void {
  const { width, height, stepPx, jxx, jxy, jyy } = field;
  const scale = 1 / (stepPx * stepPx);
  gradientRows(source, sigmaPx, (y, gx, gy) => {
    const Y = Math.floor(y / stepPx);
    if (Y >= height) return;
    for (let X = 0, x = 0, i = Y * width; X < width; X++, i++) {
      let xx = 0;
      let xy = 0;
      let yy = 0;
      for (const end = x + stepPx; x < end; x++) {
        xx += gx[x] * gx[x];
        xy += gx[x] * gy[x];
        yy += gy[x] * gy[x];
      }
      jxx[i] += xx * scale;
      jxy[i] += xy * scale;
      jyy[i] += yy * scale;
    }
  });
}
