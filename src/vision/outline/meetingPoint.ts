import type { PointPx } from '../../core/image/pointPx.js';

/** Where two lines meet, each given by two of its points; null when they run parallel. */
export function meetingPoint(
  [a, b]: readonly [PointPx, PointPx],
  [c, d]: readonly [PointPx, PointPx],
): PointPx | null {
  const ux = b.x - a.x;
  const uy = b.y - a.y;
  const vx = d.x - c.x;
  const vy = d.y - c.y;
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-9) return null;
  const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / cross;
  return { x: a.x + t * ux, y: a.y + t * uy };
}
