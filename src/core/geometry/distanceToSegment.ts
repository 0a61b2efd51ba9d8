import type { LineMm } from '../results/scoreResult.js';

/** Shortest distance from (x, y) to a segment, mm. */
export function distanceToSegment(x: number, y: number, line: LineMm): number {
  const dx = line.x2Mm - line.x1Mm;
  const dy = line.y2Mm - line.y1Mm;
  const length2 = dx * dx + dy * dy;
  const along = length2 > 0 ? ((x - line.x1Mm) * dx + (y - line.y1Mm) * dy) / length2 : 0;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(x - line.x1Mm - t * dx, y - line.y1Mm - t * dy);
}
