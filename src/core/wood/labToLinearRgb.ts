import type { Lab } from '../colour/lab.js';
import { srgbToXyz, whiteD65 } from '../colour/srgbPrimaries.js';

const expand = (f: number) => (f > 6 / 29 ? f ** 3 : (116 * f - 16) / (24389 / 27));

/** Linear sRGB of an L*a*b* (D65) colour: the inverse of linearRgbToLab (CIE 15:2004, 8.2.1). */
export function labToLinearRgb([l, a, b]: Lab): [number, number, number] {
  const fy = (l + 16) / 116;
  const xyz = [
    expand(fy + a / 500) * whiteD65[0],
    expand(fy) * whiteD65[1],
    expand(fy - b / 200) * whiteD65[2],
  ] as const;
  const [p, q, r] = srgbToXyz;
  const solve = (i: 0 | 1 | 2) => {
    const j = ((i + 1) % 3) as 0 | 1 | 2;
    const k = ((i + 2) % 3) as 0 | 1 | 2;
    return (
      xyz[0] * (q[j] * r[k] - q[k] * r[j]) +
      xyz[1] * (r[j] * p[k] - r[k] * p[j]) +
      xyz[2] * (p[j] * q[k] - p[k] * q[j])
    );
  };
  const det =
    p[0] * (q[1] * r[2] - q[2] * r[1]) +
    p[1] * (q[2] * r[0] - q[0] * r[2]) +
    p[2] * (q[0] * r[1] - q[1] * r[0]);
  return [solve(0) / det, solve(1) / det, solve(2) / det];
}
