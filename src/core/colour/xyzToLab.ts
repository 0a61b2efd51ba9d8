import type { Lab } from './lab.js';
import { whiteD65 } from './srgbPrimaries.js';

const epsilon = 216 / 24389;
const kappa = 24389 / 27;
const compress = (t: number) => (t > epsilon ? Math.cbrt(t) : (kappa * t + 16) / 116);

/**
 * CIE 1976 L*a*b* of an XYZ colour against the D65 white.
 *
 * L* = 116 f(Y) - 16, a* = 500 (f(X/Xn) - f(Y)), b* = 200 (f(Y) - f(Z/Zn)); f is the cube root
 * with a straight toe below 216/24389.
 *
 * @param x tristimulus X, white at `whiteD65[0]`.
 * @param y tristimulus Y, white at 1.
 * @param z tristimulus Z, white at `whiteD65[2]`.
 * Source: CIE 15:2004, 8.2.1.
 */
export function xyzToLab(x: number, y: number, z: number): Lab {
  const fx = compress(x / whiteD65[0]);
  const fy = compress(y);
  const fz = compress(z / whiteD65[2]);
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}
