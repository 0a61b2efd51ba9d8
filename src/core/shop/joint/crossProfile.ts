import type { Plane } from '../../image/plane.js';
import { sampleBilinear } from '../../image/sampleBilinear.js';

/** A straight line in a photo, px from its upper left corner. */
export interface LinePx {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/**
 * Light across a line, averaged along a stretch of it.
 * @param plane linear luminance
 * @param line the joint, px
 * @param alongPx middle of the stretch, from the line's first end, px
 * @param stretchPx length that is averaged, px
 * @param offsetPx shift of the whole profile across the line, px (0 = on the joint)
 * @param reachPx how far to each side, px
 * @param stepPx distance of samples, px
 * @returns luminance at offsets -reach, -reach + step, …, +reach
 */
export function crossProfile(
  plane: Plane,
  line: LinePx,
  alongPx: number,
  stretchPx: number,
  offsetPx: number,
  reachPx: number,
  stepPx: number,
): Float64Array {
  const length = Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
  const ux = (line.x2 - line.x1) / length;
  const uy = (line.y2 - line.y1) / length;
  const count = 2 * Math.round(reachPx / stepPx) + 1;
  const profile = new Float64Array(count);
  const samples = Math.max(1, Math.round(stretchPx));
  for (let k = 0; k < samples; k++) {
    const along = alongPx + ((k + 0.5) / samples - 0.5) * stretchPx;
    for (let i = 0; i < count; i++) {
      const across = offsetPx + (i - (count - 1) / 2) * stepPx;
      const x = line.x1 + along * ux - across * uy - 0.5;
      const y = line.y1 + along * uy + across * ux - 0.5;
      profile[i]! += sampleBilinear(plane, x, y) / samples;
    }
  }
  return profile;
}
