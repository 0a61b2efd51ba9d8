import { createPlane, type Plane } from '../image/plane.js';
import { copyReflectedRow } from './copyReflectedRow.js';
import { reflectIndex } from './reflectIndex.js';
import { sumShifted } from './sumShifted.js';

/**
 * Correlates a plane with kernelX along rows and kernelY along columns; mirrored borders.
 *
 * One pass with a ring of kernelY.length rows, so `into` may be `source` itself.
 *
 * @param source plane to filter.
 * @param kernelX odd number of weights, the middle one on the pixel.
 * @param kernelY odd number of weights, the middle one on the pixel.
 * @param into receives the result, same size; default a new plane.
 * @returns `into`.
 */
export function convolveSeparable(
  source: Plane,
  kernelX: Float64Array,
  kernelY: Float64Array,
  into: Plane = createPlane(source.width, source.height),
): Plane {
  const { width, height } = source;
  const radiusX = (kernelX.length - 1) / 2;
  const radiusY = (kernelY.length - 1) / 2;
  const ring = new Float32Array(kernelY.length * width);
  const padded = new Float32Array(width + 2 * radiusX);
  const startsX = Int32Array.from(kernelX, (_, i) => i);
  const startsY = new Int32Array(kernelY.length);
  let ready = 0;
  for (let y = 0; y < height; y++) {
    for (; ready <= Math.min(y + radiusY, height - 1); ready++) {
      copyReflectedRow(source.data, ready * width, width, radiusX, padded);
      sumShifted(ring, (ready % kernelY.length) * width, width, padded, startsX, kernelX);
    }
    for (let t = 0; t < kernelY.length; t++) {
      const row = reflectIndex(y + t - radiusY, height);
      startsY[t] = (row % kernelY.length) * width;
    }
    sumShifted(into.data, y * width, width, ring, startsY, kernelY);
  }
  return into;
}
