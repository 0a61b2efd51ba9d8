import type { CornersPx } from '../../core/image/photoScale.js';
import type { PointPx } from '../../core/image/pointPx.js';

/** Four corners clockwise, beginning at the one nearest the photo's top left. */
export function orderCorners(corners: readonly PointPx[]): CornersPx {
  const middleX = corners.reduce((sum, { x }) => sum + x, 0) / 4;
  const middleY = corners.reduce((sum, { y }) => sum + y, 0) / 4;
  const around = [...corners].sort(
    (p, q) => Math.atan2(p.y - middleY, p.x - middleX) - Math.atan2(q.y - middleY, q.x - middleX),
  );
  const sums = around.map(({ x, y }) => x + y);
  const first = sums.indexOf(Math.min(...sums));
  const [a, b, c, d] = [0, 1, 2, 3].map((i) => around[(first + i) % 4]);
  return [a, b, c, d];
}
