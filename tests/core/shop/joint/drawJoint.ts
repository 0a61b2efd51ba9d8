import { createPlane, type Plane } from '../../../../src/core/image/plane.js';
import { createRandom } from '../../../../src/core/random/createRandom.js';

/** A drawn joint whose gap is known: wood with lines, a dark gap by area, blur, noise. */
export interface DrawnJoint {
  readonly pxPerMm: number;
  readonly lengthMm: number;
  readonly gapMm: (xMm: number) => number;
  readonly blurPx?: number;
  readonly noise?: number;
  /** Contrast of the wood's own lines, 0 to 1. */
  readonly figure?: number;
  /** Light inside the gap against the wood's. */
  readonly floor?: number;
  readonly seed: number;
}

/** 20 mm high, the joint in the middle, wood lines at 3 degrees to it. */
export function drawJoint(spec: DrawnJoint): Plane {
  const { pxPerMm, lengthMm, gapMm, blurPx = 0.8, noise = 0.01, figure = 0.15, floor = 0.1 } = spec;
  const random = createRandom(spec.seed);
  const width = Math.round(lengthMm * pxPerMm);
  const height = Math.round(20 * pxPerMm);
  const middle = height / 2;
  const phases = Array.from({ length: 12 }, () => random.uniform(0, 2 * Math.PI));
  const slope = Math.tan((3 * Math.PI) / 180);
  const linesAt = (across: number) =>
    phases.reduce(
      (sum, phase, k) => sum + Math.sin((across * 2 * Math.PI * (k + 2)) / 9 + phase),
      0,
    );
  // The wood repeats every 9 mm; a table of it is quicker than sines for each pixel.
  const table = Array.from({ length: 1800 }, (_, index) => linesAt(index / 200));
  const plane = createPlane(width, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const across = (y - x * slope) / pxPerMm;
      const lines = table[((Math.round(across * 200) % 1800) + 1800) % 1800]!;
      const wood = 0.4 * (1 + (figure * lines) / Math.sqrt(12));
      const half = (gapMm(x / pxPerMm) * pxPerMm) / 2;
      const covered = Math.max(0, Math.min(y + 1, middle + half) - Math.max(y, middle - half));
      plane.data[y * width + x] = wood * (1 - covered * (1 - floor));
    }
  }
  return withNoise(blurred(plane, blurPx), noise, random.normal);
}

/** A Gaussian across the joint only: along it nothing changes fast. */
function blurred(plane: Plane, sigma: number): Plane {
  const { width, height } = plane;
  const out = createPlane(width, height);
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-((k - reach) ** 2) / (2 * sigma * sigma)),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const row = Math.min(height - 1, Math.max(0, y + k));
        sum += weights[k + reach]! * plane.data[row * width + x]!;
      }
      out.data[y * width + x] = sum / total;
    }
  }
  return out;
}

function withNoise(
  plane: Plane,
  noise: number,
  normal: (mean: number, deviation: number) => number,
): Plane {
  for (let i = 0; i < plane.data.length; i++) plane.data[i]! += normal(0, noise);
  return plane;
}
