import { createPlane, type Plane } from '../image/plane.js';
import { averageBlock } from './averageBlock.js';
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
      averageBlock(source, way, y0 * width + x0, x1 - x0, y1 - y0, out.data);
    }
  }
  return out;
}
