import type { RgbImage } from '../core/image/rgbImage.js';
import type { CvMat, OpenCv } from './openCv.js';

/** Copies a picture onto OpenCV's heap; the caller frees the matrix. */
export function matFromImage(cv: OpenCv, { width, height, data }: RgbImage): CvMat {
  const mat = new cv.Mat(height, width, cv.CV_8UC3);
  mat.data.set(data);
  return mat;
}
