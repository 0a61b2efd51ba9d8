import type { LineMm } from '../../core/results/scoreResult.js';

/** Whether two lines are the same joint: both ends within `withinMm` of each other. */
export function sameSeam(a: LineMm, b: LineMm, withinMm = 4): boolean {
  const near = (x1: number, y1: number, x2: number, y2: number) =>
    Math.hypot(x1 - x2, y1 - y2) <= withinMm;
  return near(a.x1Mm, a.y1Mm, b.x1Mm, b.y1Mm) && near(a.x2Mm, a.y2Mm, b.x2Mm, b.y2Mm);
}
