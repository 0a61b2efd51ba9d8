import { acrossRings, type RingFamily } from './ringFamily.js';

/** Whether two families' directions differ over a picture by `leastRad` (rms of the sine) or more. */
export function familiesDiffer(
  a: RingFamily,
  b: RingFamily,
  widthMm: number,
  heightMm: number,
  leastRad: number,
): boolean {
  let sum = 0;
  let count = 0;
  for (let row = 0; row < 4; row++) {
    for (let column = 0; column < 16; column++) {
      const x = ((column + 0.5) * widthMm) / 16;
      const y = ((row + 0.5) * heightMm) / 4;
      const [ax, ay] = acrossRings(a, x, y);
      const [bx, by] = acrossRings(b, x, y);
      sum += (ax * by - ay * bx) ** 2 / ((ax * ax + ay * ay) * (bx * bx + by * by) + 1e-18);
      count++;
    }
  }
  return Math.sqrt(sum / count) >= leastRad;
}
