import { SeamgrainError } from '../errors.js';
import type { TensorField } from './tensorField.js';

/**
 * A field of zeros over a picture.
 *
 * @param size the picture, px.
 * @param stepPx pixels between samples, whole, 1 or more.
 * @returns floor(width / stepPx) x floor(height / stepPx) samples.
 * @throws SeamgrainError `cannotDo` when not one sample fits.
 */
export function createTensorField(
  size: { readonly width: number; readonly height: number },
  stepPx: number,
): TensorField {
  const width = Math.floor(size.width / stepPx);
  const height = Math.floor(size.height / stepPx);
  if (!Number.isInteger(stepPx) || stepPx < 1 || width < 1 || height < 1) {
    throw new SeamgrainError(
      'cannotDo',
      `No grain can be measured every ${stepPx} px in ${size.width} x ${size.height} px.`,
      'Use a larger picture.',
    );
  }
  const zeros = () => new Float32Array(width * height);
  return { width, height, stepPx, jxx: zeros(), jxy: zeros(), jyy: zeros() };
}
