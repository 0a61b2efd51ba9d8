import { createPlane, type Plane } from '../image/plane.js';
import { convolveSeparable } from './convolveSeparable.js';
import { gaussianKernel } from './gaussianKernel.js';
import { halfKernel } from './narrow/halfKernel.js';
import { intoFourRows } from './narrow/intoFourRows.js';
import { narrowPitch, narrowRadiusPx, narrowRing, overFourRows } from './narrow/overFourRows.js';
import { symmetricAlongRow } from './narrow/symmetricAlongRow.js';
import { symmetricDownColumns } from './narrow/symmetricDownColumns.js';

/**
 * Gaussian smoothing with mirrored borders.
 *
 * Up to sigma 1.6 px a quick way with 13 taps, about a third of the time.
 *
 * @param source plane to smooth.
 * @param sigmaPx standard deviation along both axes, px, above 0.
 * @param into receives the result, default a new plane; may be `source`.
 * @returns `into`.
 */
export function gaussianBlur(
  source: Plane,
  sigmaPx: number,
  into: Plane = createPlane(source.width, source.height),
): Plane {
  const kernel = gaussianKernel(sigmaPx);
  if (kernel.length > 2 * narrowRadiusPx + 1) {
    return convolveSeparable(source, kernel, kernel, into);
  }
  const { width } = source;
  const weights = halfKernel(kernel);
  const ring = narrowRing(width);
  const pitch = narrowPitch(width);
  overFourRows(
    source,
    (padded, start) => symmetricAlongRow(padded, ring, start, pitch, weights),
    (y, starts) => {
      intoFourRows(into.data, width, y, (out, start) => {
        symmetricDownColumns(ring, starts, out, start, width, weights);
      });
    },
  );
  return into;
}
