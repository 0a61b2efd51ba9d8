import type { LineMm } from '../../core/results/scoreResult.js';

/** Distance from a panel point to a segment, and how far along the segment the nearest place lies. */
export function distanceToLine(line: LineMm, xMm: number, yMm: number) {
  const dx = line.x2Mm - line.x1Mm;
  const dy = line.y2Mm - line.y1Mm;
  const lengthMm = Math.hypot(dx, dy);
  if (lengthMm === 0) {
    return { distanceMm: Math.hypot(xMm - line.x1Mm, yMm - line.y1Mm), alongMm: 0 };
  }
  const share = ((xMm - line.x1Mm) * dx + (yMm - line.y1Mm) * dy) / lengthMm ** 2;
  const t = Math.min(1, Math.max(0, share));
  return {
    distanceMm: Math.hypot(xMm - line.x1Mm - t * dx, yMm - line.y1Mm - t * dy),
    alongMm: t * lengthMm,
  };
}
