import type { CornersPx } from '../core/image/photoScale.js';
import type { PointPx } from '../core/image/pointPx.js';

/** How many photo pixels a millimetre gets along each edge of the panel. */
export interface EdgePxPerMm {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** The photo's density along the panel's four edges, px/mm: edge length in the photo over its real length. */
export function edgePxPerMm(corners: CornersPx, widthMm: number, heightMm: number): EdgePxPerMm {
  const [a, b, c, d] = corners;
  return {
    top: distancePx(a, b) / widthMm,
    right: distancePx(b, c) / heightMm,
    bottom: distancePx(c, d) / widthMm,
    left: distancePx(d, a) / heightMm,
  };
}

/** Distance between two places in a photo, px. */
export function distancePx(from: PointPx, to: PointPx): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}
