import { averageDown } from '../../filter/averageDown.js';
import type { BlockTensor } from '../../grain/blockTensor.js';
import { createPlane, type Plane } from '../../image/plane.js';
import { carriedBlocks } from '../carriedBlocks.js';
import { evenlyLit } from './evenlyLit.js';

/** Lines finer than this across the grain are averaged away before looking for seams, px/mm. */
const usualPxPerMm = 2.8;
/** Wood differs from its panel by no more than this in log luminance (a factor of 2). */
const woodContrast = 0.7;

/** A panel as the finder looks at it. */
export interface FinderView {
  readonly pxPerMm: number;
  /** Log luminance, averaged down, about 0 (`evenlyLit`). */
  readonly plain: Plane;
  /** The same, limited to what wood may do. */
  readonly reduced: Plane;
  /** Gradient products of its ring lines. */
  readonly blocks: BlockTensor;
}

/** Averages a panel down to what joints need to be found, and reads its grain. */
export function finderView(logLuminance: Plane, pxPerMm: number): FinderView {
  const factor = Math.max(1, Math.round(pxPerMm / usualPxPerMm));
  const plain = evenlyLit(averageDown(logLuminance, factor));
  const reduced = tamed(plain);
  const scale = pxPerMm / factor;
  return { pxPerMm: scale, plain, reduced, blocks: carriedBlocks(reduced, scale) };
}

/**
 * Limits a reveal's black (or glare) to what wood may do, so that it does not turn the grain
 * direction of everything beside it.
 */
function tamed(plane: Plane): Plane {
  const { width, height, data } = plane;
  const out = createPlane(width, height);
  for (let i = 0; i < data.length; i++) {
    out.data[i] = Math.max(-woodContrast, Math.min(woodContrast, data[i]));
  }
  return out;
}
