import type { JointGapReading, JointShape } from '../../results/dryClampResult.js';

/**
 * How the gap runs: wide in the middle (hollow), at both ends (convex), at one end, or unevenly.
 * Thirds of the joint are compared; a difference of half a slip of paper counts.
 */
export function jointShape(readings: readonly JointGapReading[], paperMm: number): JointShape {
  const gaps = readings.map(({ gapMm }) => gapMm ?? 0);
  if (Math.max(...gaps) <= paperMm) return 'tight';
  const third = Math.max(1, Math.floor(gaps.length / 3));
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const left = mean(gaps.slice(0, third));
  const middle = mean(gaps.slice(third, gaps.length - third));
  const right = mean(gaps.slice(gaps.length - third));
  const counts = paperMm / 2;
  if (middle > Math.max(left, right) + counts) return 'hollow';
  if (Math.min(left, right) > middle + counts) return 'convex';
  if (left > right + counts) return 'open left';
  return right > left + counts ? 'open right' : 'uneven';
}
