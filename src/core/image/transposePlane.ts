import type { Plane } from './plane.js';

const TILE = 32;

/**
 * The plane with x and y exchanged, so that a crosscut (a seam along y) can be read by the code
 * written for a rip (a seam along x): left becomes above, right becomes below.
 */
export function transposePlane(plane: Plane): Plane {
  const { width, height, data } = plane;
  const out = new Float32Array(width * height);
  for (let ty = 0; ty < height; ty += TILE) {
    const yEnd = Math.min(height, ty + TILE);
    for (let tx = 0; tx < width; tx += TILE) {
      const xEnd = Math.min(width, tx + TILE);
      for (let y = ty; y < yEnd; y++) {
        for (let x = tx; x < xEnd; x++) out[x * height + y] = data[y * width + x];
      }
    }
  }
  return { width: height, height: width, data: out };
}
