import { createPlane, type Plane } from '../image/plane.js';
import { type BlockDirections, GrainWay } from './grainWay.js';

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

/**
 * One pass. All pixels of a block go the way that its middle goes: the direction is the block's
 * own, so they share the way, and with it the weights between neighbouring pixels.
 */
function averagedAlong(
  source: Plane,
  field: BlockDirections,
  sigmaPx: number,
  stepPx: number,
): Plane {
  const { width, height } = source;
  const out = createPlane(width, height);
  const weights = Float64Array.from({ length: Math.round((2 * sigmaPx) / stepPx) + 1 }, (_, k) =>
    Math.exp(-0.5 * ((k * stepPx) / sigmaPx) ** 2),
  );
  const way = new GrainWay(source, field, stepPx, weights);
  for (let row = 0; row < field.height; row++) {
    const y0 = row * field.blockPx;
    // The last blocks take in what is left of the plane beside them.
    const y1 = row < field.height - 1 ? y0 + field.blockPx : height;
    for (let column = 0; column < field.width; column++) {
      const x0 = column * field.blockPx;
      const x1 = column < field.width - 1 ? x0 + field.blockPx : width;
      way.from(x0, y0, x1, y1);
      for (let y = y0; y < y1; y++) {
        averageRow(source, way, y * width + x0, y * width + x1, out.data);
      }
    }
  }
  return out;
}

/** One row of a block, pixels from .. to - 1 of the plane. */
function averageRow(
  { width, data }: Plane,
  way: GrainWay,
  from: number,
  to: number,
  out: Float32Array,
): void {
  let i = from;
  for (; i + 3 <= to; i += 3) averageThree(data, width, way, i, out);
  for (; i < to; i++) averageOne(data, width, way, i, out);
}

function averageOne(
  data: Float32Array,
  width: number,
  { count, offset, corner, total }: GrainWay,
  i: number,
  out: Float32Array,
): void {
  let sum = data[i];
  for (let n = 0, c = 0; n < count; n++, c += 4) {
    const j = i + offset[n];
    const k = j + width;
    sum += corner[c] * data[j] + corner[c + 1] * data[j + 1];
    sum += corner[c + 2] * data[k] + corner[c + 3] * data[k + 1];
  }
  out[i] = sum / total;
}

/** Three neighbours at once: they share half of what they read. */
function averageThree(
  data: Float32Array,
  width: number,
  { count, offset, corner, total }: GrainWay,
  i: number,
  out: Float32Array,
): void {
  let first = data[i];
  let second = data[i + 1];
  let third = data[i + 2];
  for (let n = 0, c = 0; n < count; n++, c += 4) {
    const upperLeft = corner[c];
    const upperRight = corner[c + 1];
    const lowerLeft = corner[c + 2];
    const lowerRight = corner[c + 3];
    const j = i + offset[n];
    const k = j + width;
    const u1 = data[j + 1];
    const u2 = data[j + 2];
    const l1 = data[k + 1];
    const l2 = data[k + 2];
    first += upperLeft * data[j] + upperRight * u1 + lowerLeft * data[k] + lowerRight * l1;
    second += upperLeft * u1 + upperRight * u2 + lowerLeft * l1 + lowerRight * l2;
    third += upperLeft * u2 + upperRight * data[j + 3] + lowerLeft * l2 + lowerRight * data[k + 3];
  }
  out[i] = first / total;
  out[i + 1] = second / total;
  out[i + 2] = third / total;
}
