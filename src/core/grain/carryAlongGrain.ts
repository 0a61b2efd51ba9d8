import { createPlane, type Plane } from '../image/plane.js';

/** Grain direction per block of the plane: unit vectors, sign free. */
export interface BlockDirections {
  readonly width: number;
  readonly height: number;
  readonly blockPx: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/**
 * Averages every pixel along its own grain line (line integral convolution with a Gaussian), so
 * that what runs on for centimetres, the ring line, stays, and what ends after millimetres,
 * pores and fibre streaks that point another way, fades.
 *
 * Cabral & Leedom 1993, SIGGRAPH, the principle.
 *
 * @param sigmaPx standard deviation of the weight along the line, px.
 */
export function carryAlongGrain(source: Plane, field: BlockDirections, sigmaPx: number): Plane {
  const out = createPlane(source.width, source.height);
  const stepPx = Math.max(1, sigmaPx / 12);
  const steps = Math.round((2 * sigmaPx) / stepPx);
  const weights = Float64Array.from({ length: steps + 1 }, (_, k) =>
    Math.exp(-0.5 * ((k * stepPx) / sigmaPx) ** 2),
  );
  for (let y = 0; y < source.height; y++) {
    for (let x = 0; x < source.width; x++) {
      const i = y * source.width + x;
      const ahead = walk(source, field, x, y, stepPx, weights);
      const behind = walk(source, field, x, y, -stepPx, weights);
      const weight = 1 + ahead.weight + behind.weight;
      out.data[i] = (source.data[i] + ahead.sum + behind.sum) / weight;
    }
  }
  return out;
}

const walked = [
  { sum: 0, weight: 0 },
  { sum: 0, weight: 0 },
];

/** Weighted sum along the line from (x, y), forward for a positive step. */
function walk(
  { width, height, data }: Plane,
  field: BlockDirections,
  x: number,
  y: number,
  stepPx: number,
  weights: Float64Array,
): { sum: number; weight: number } {
  const out = walked[stepPx > 0 ? 0 : 1];
  out.sum = 0;
  out.weight = 0;
  let dx = 0;
  let dy = 0;
  let px = x;
  let py = y;
  for (let k = 1; k < weights.length; k++) {
    const bx = Math.min(field.width - 1, (px / field.blockPx) | 0);
    const by = Math.min(field.height - 1, (py / field.blockPx) | 0);
    let cos = field.cos[by * field.width + bx] * stepPx;
    let sin = field.sin[by * field.width + bx] * stepPx;
    if (k > 1 && cos * dx + sin * dy < 0) {
      cos = -cos;
      sin = -sin;
    }
    dx = cos;
    dy = sin;
    px += dx;
    py += dy;
    if (px < 0 || py < 0 || px >= width - 1 || py >= height - 1) break;
    const i = (py | 0) * width + (px | 0);
    const fx = px - (px | 0);
    const fy = py - (py | 0);
    const top = data[i] + fx * (data[i + 1] - data[i]);
    const bottom = data[i + width] + fx * (data[i + width + 1] - data[i + width]);
    out.sum += weights[k] * (top + fy * (bottom - top));
    out.weight += weights[k];
  }
  return out;
}
