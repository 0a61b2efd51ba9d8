import type { RgbImage } from '../image/rgbImage.js';

const tableSize = 8192;
const table = Uint8Array.from({ length: tableSize + 1 }, (_, i) => {
  const light = i / tableSize;
  const level = light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
  return Math.round(255 * level);
});

/** Rounds interleaved linear light (0 to 1, clipped) to an 8-bit sRGB picture (IEC 61966-2-1). */
export function encodeSrgb(light: Float32Array, width: number, height: number): RgbImage {
  const data = new Uint8ClampedArray(light.length);
  for (let i = 0; i < light.length; i++) {
    const value = light[i]!;
    data[i] = table[value <= 0 ? 0 : value >= 1 ? tableSize : (value * tableSize + 0.5) | 0]!;
  }
  return { width, height, data };
}
