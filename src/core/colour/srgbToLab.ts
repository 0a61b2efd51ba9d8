import type { Lab } from './lab.js';
import { linearLight } from './linearLight.js';
import { linearRgbToLab } from './linearRgbToLab.js';

/**
 * CIE L*a*b* (D65) of one sRGB colour.
 *
 * @param red sRGB level, 0 to 255.
 * @param green sRGB level, 0 to 255.
 * @param blue sRGB level, 0 to 255.
 */
export function srgbToLab(red: number, green: number, blue: number): Lab {
  return linearRgbToLab(linearLight(red), linearLight(green), linearLight(blue));
}
