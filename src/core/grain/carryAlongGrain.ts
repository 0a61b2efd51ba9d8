import { createPlane, type Plane } from '../image/plane.js';

/** Grain direction per block of the plane: unit vectors, sign free. */
export interface BlockDirections {
  readonly width: number;
  readonly height: number;
  readonly blockPx: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/** Share of sigma in the first pass, and steps per sigma of either: fine first, then far. */
const firstShare = 0.25;
const stepsPerSigma = { first: 2, second: 3 };
const shortestTwoPassPx = 6;

/**
 * Averages every pixel along its own grain line (line integral convolution with a Gaussian), so
 * that what runs on for centimetres, the ring line, stays, and what ends after millimetres,
 * pores and fibre streaks that point another way, fades.
 *
 * Two passes whose variances add up: the first averages over a quarter of sigma, the second may
 * then take steps of a third of a sigma, which costs less than half of one pass in small steps.
 *
 * Cabral & Leedom 1993, SIGGRAPH, the principle.
 *
 * @param sigmaPx standard deviation of the weight along the line, px.
 */
export function carryAlongGrain(source: Plane, field: BlockDirections, sigmaPx: number): Plane {
  if (sigmaPx < shortestTwoPassPx) {
    return averagedAlong(source, field, sigmaPx, Math.max(1, sigmaPx / 12));
  }
  const first = firstShare * sigmaPx;
  const second = Math.sqrt(sigmaPx * sigmaPx - first * first);
  const near = averagedAlong(source, field, first, first / stepsPerSigma.first);
  return averagedAlong(near, field, second, second / stepsPerSigma.second);
}

function averagedAlong(
  source: Plane,
  field: BlockDirections,
  sigmaPx: number,
  stepPx: number,
): Plane {
  const out = createPlane(source.width, source.height);
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
  { cos: cosOf, sin: sinOf, width: columns, height: rows, blockPx }: BlockDirections,
  x: number,
  y: number,
  stepPx: number,
  weights: Float64Array,
): { sum: number; weight: number } {
  const out = walked[stepPx > 0 ? 0 : 1];
  const perPx = 1 / blockPx;
  let [dx, dy, sum, weight] = [0, 0, 0, 0];
  let px = x;
  let py = y;
  for (let k = 1; k < weights.length; k++) {
    const bx = Math.min(columns - 1, (px * perPx) | 0);
    const block = Math.min(rows - 1, (py * perPx) | 0) * columns + bx;
    let cos = cosOf[block] * stepPx;
    let sin = sinOf[block] * stepPx;
    if (k > 1 && cos * dx + sin * dy < 0) {
      cos = -cos;
      sin = -sin;
    }
    dx = cos;
    dy = sin;
    px += dx;
    py += dy;
    if (px < 0 || py < 0 || px >= width - 1 || py >= height - 1) break;
    const ix = px | 0;
    const iy = py | 0;
    const i = iy * width + ix;
    const fx = px - ix;
    const fy = py - iy;
    const top = data[i] + fx * (data[i + 1] - data[i]);
    const bottom = data[i + width] + fx * (data[i + width + 1] - data[i + width]);
    sum += weights[k] * (top + fy * (bottom - top));
    weight += weights[k];
  }
  out.sum = sum;
  out.weight = weight;
  return out;
}
