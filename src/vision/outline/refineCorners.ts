import { labPlanes } from '../../core/colour/labPlanes.js';
import type { CornersPx } from '../../core/image/photoScale.js';
import type { PointPx } from '../../core/image/pointPx.js';
import type { RgbImage } from '../../core/image/rgbImage.js';
import { meetingPoint } from './meetingPoint.js';
import { sideLine } from './sideLine.js';

const finePx = 1200;
const reachShare = 0.025;
/** A side is believed when this share of it agrees on one line and the colour steps over it. */
const leastSupport = 0.4;
const leastStep = 2;

/**
 * Moves guessed corners onto the panel's real edges.
 * @returns null when a side has no edge near it
 */
export function refineCorners(photo: RgbImage, guess: CornersPx): CornersPx | null {
  const reduceBy = Math.ceil(Math.max(photo.width, photo.height) / finePx);
  const planes = labPlanes(photo, reduceBy);
  const reachPx = (reachShare * Math.hypot(photo.width, photo.height)) / reduceBy;
  const sides: [PointPx, PointPx][] = [];
  for (let i = 0; i < 4; i++) {
    const from = shrink(guess[i], reduceBy);
    const to = shrink(guess[(i + 1) % 4], reduceBy);
    const { shiftFrom, shiftTo, support, step } = sideLine(planes, from, to, reachPx);
    if (support < leastSupport || step < leastStep) return null;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const outX = (to.y - from.y) / length;
    const outY = (from.x - to.x) / length;
    sides.push([
      { x: from.x + shiftFrom * outX, y: from.y + shiftFrom * outY },
      { x: to.x + shiftTo * outX, y: to.y + shiftTo * outY },
    ]);
  }
  const corners = sides.map((side, i) => meetingPoint(sides[(i + 3) % 4], side));
  if (!corners.every((corner) => corner !== null)) return null;
  const [a, b, c, d] = corners.map(({ x, y }) => ({ x: x * reduceBy, y: y * reduceBy }));
  return [a, b, c, d];
}

function shrink({ x, y }: PointPx, reduceBy: number): PointPx {
  return { x: x / reduceBy, y: y / reduceBy };
}
