import { gaussianBlur } from '../../filter/gaussianBlur.js';
import { gaussianGradient } from '../../filter/gaussianGradient.js';
import { createPlane, type Plane } from '../../image/plane.js';

const slopeMm = 0.16;
const aroundMm = 2;

/**
 * Slope of the picture along its own plainest lines, per pixel: whatever dominates around a place
 * (usually the rings) vanishes, and what crosses it stays.
 */
export function alongPlainestLines(plane: Plane, pxPerMm: number): Plane {
  const { width, height, gx, gy } = gaussianGradient(plane, Math.max(0.8, slopeMm * pxPerMm));
  const smooth = (of: (i: number) => number) => {
    const product = createPlane(width, height);
    for (let i = 0; i < product.data.length; i++) product.data[i] = of(i);
    return gaussianBlur(product, aroundMm * pxPerMm).data;
  };
  const cosine = smooth((i) => gx[i] * gx[i] - gy[i] * gy[i]);
  const sine = smooth((i) => 2 * gx[i] * gy[i]);
  const out = createPlane(width, height);
  for (let i = 0; i < out.data.length; i++) {
    const across = Math.atan2(sine[i], cosine[i]) / 2;
    out.data[i] = gy[i] * Math.cos(across) - gx[i] * Math.sin(across);
  }
  return out;
}
