import type { CornersPx } from '../../core/image/photoScale.js';

/** Whether four pins, clockwise from top left, make a convex shape worth rectifying. */
export function isFairQuad(corners: CornersPx): boolean {
  return corners.every((at, index) => {
    const before = corners[(index + 3) % 4]!;
    const after = corners[(index + 1) % 4]!;
    const inX = at.x - before.x;
    const inY = at.y - before.y;
    const outX = after.x - at.x;
    const outY = after.y - at.y;
    const turn = inX * outY - inY * outX;
    const reach = Math.hypot(inX, inY) * Math.hypot(outX, outY);
    return reach > 16 && turn > 0.05 * reach;
  });
}
