import { hash3 } from './hash3.js';

// The twelve edge directions of a cube, four of them twice: cheap and free of axis bias.
const gradientX = [1, -1, 1, -1, 1, -1, 1, -1, 0, 0, 0, 0, 1, 0, -1, 0];
const gradientY = [1, 1, -1, -1, 0, 0, 0, 0, 1, -1, 1, -1, 1, -1, 1, -1];
const gradientZ = [0, 0, 0, 0, 1, 1, -1, -1, 1, 1, -1, -1, 0, 1, 0, -1];

/** Value and exact partial derivatives of a noise field at one point. */
export interface NoiseSample {
  value: number;
  dx: number;
  dy: number;
  dz: number;
}

/**
 * Smooth gradient noise in space, with its exact derivative.
 *
 * Zero at every whole-number point, one hump per unit length, standard deviation about 0.27,
 * within -1.1 .. 1.1, continuous to the second derivative (Perlin 2002, "Improving noise":
 * quintic fade t^3 (6 t^2 - 15 t + 10)).
 *
 * @param out receives value and derivatives (no allocation).
 */
export function gradientNoise3(
  x: number,
  y: number,
  z: number,
  seed: number,
  out: NoiseSample,
): void {
  const ix = Math.floor(x);
  const iy = Math.floor(y);
  const iz = Math.floor(z);
  const fx = x - ix;
  const fy = y - iy;
  const fz = z - iz;
  const u = fx * fx * fx * (fx * (6 * fx - 15) + 10);
  const v = fy * fy * fy * (fy * (6 * fy - 15) + 10);
  const w = fz * fz * fz * (fz * (6 * fz - 15) + 10);
  const du = 30 * fx * fx * (fx * (fx - 2) + 1);
  const dv = 30 * fy * fy * (fy * (fy - 2) + 1);
  const dw = 30 * fz * fz * (fz * (fz - 2) + 1);
  let value = 0;
  let dx = 0;
  let dy = 0;
  let dz = 0;
  for (let corner = 0; corner < 8; corner++) {
    const cx = corner & 1;
    const cy = (corner >> 1) & 1;
    const cz = corner >> 2;
    const direction = hash3(ix + cx, iy + cy, iz + cz, seed) & 15;
    const gx = gradientX[direction]!;
    const gy = gradientY[direction]!;
    const gz = gradientZ[direction]!;
    const ramp = gx * (fx - cx) + gy * (fy - cy) + gz * (fz - cz);
    const wx = cx === 1 ? u : 1 - u;
    const wy = cy === 1 ? v : 1 - v;
    const wz = cz === 1 ? w : 1 - w;
    const weight = wx * wy * wz;
    value += weight * ramp;
    dx += weight * gx + (cx === 1 ? du : -du) * wy * wz * ramp;
    dy += weight * gy + (cy === 1 ? dv : -dv) * wx * wz * ramp;
    dz += weight * gz + (cz === 1 ? dw : -dw) * wx * wy * ramp;
  }
  out.value = value;
  out.dx = dx;
  out.dy = dy;
  out.dz = dz;
}
