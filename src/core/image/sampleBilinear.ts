import type { Plane } from './plane.js';

/**
 * The plane's value at pixel-centre coordinates (x, y), bilinear; positions outside are clamped to the border.
 * x = 0 is the centre of the first pixel.
 */
export function sampleBilinear(plane: Plane, x: number, y: number): number {
  const { width, height, data } = plane;
  if (x >= 0 && y >= 0 && x < width - 1 && y < height - 1) {
    return between(data, width, x | 0, y | 0, x, y);
  }
  const xc = Math.min(width - 1, Math.max(0, x));
  const yc = Math.min(height - 1, Math.max(0, y));
  const x0 = Math.min(width - 2, xc | 0);
  const y0 = Math.min(height - 2, yc | 0);
  if (x0 < 0 || y0 < 0) return data[Math.max(0, y0) * width + Math.max(0, x0)];
  return between(data, width, x0, y0, xc, yc);
}

function between(
  data: Float32Array,
  width: number,
  x0: number,
  y0: number,
  x: number,
  y: number,
): number {
  const fx = x - x0;
  const i = y0 * width + x0;
  const top = data[i] + fx * (data[i + 1] - data[i]);
  const bottom = data[i + width] + fx * (data[i + width + 1] - data[i + width]);
  return top + (y - y0) * (bottom - top);
}
