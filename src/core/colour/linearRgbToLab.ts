import type { Lab } from './lab.js';
import { srgbToXyz } from './srgbPrimaries.js';
import { xyzToLab } from './xyzToLab.js';

/**
 * CIE L*a*b* (D65) of a colour given in linear light, such as an average over a patch.
 *
 * @param red linear sRGB red, 0 to 1.
 * @param green linear sRGB green, 0 to 1.
 * @param blue linear sRGB blue, 0 to 1.
 */
export function linearRgbToLab(red: number, green: number, blue: number): Lab {
  const [x, y, z] = srgbToXyz;
  return xyzToLab(
    x[0] * red + x[1] * green + x[2] * blue,
    y[0] * red + y[1] * green + y[2] * blue,
    z[0] * red + z[1] * green + z[2] * blue,
  );
}
