import type { ForecastSummary } from '../results/forecastResult.js';
import type { RipCost } from './ripCurve.js';

/** Below this a joint disappears. */
const disappearsBelow = 0.5;

/** How the rips of one face stand as a whole; nulls where none could be told. */
export function curveSummary(curve: readonly RipCost[]): ForecastSummary {
  const told = curve.filter((point) => point.v !== null).sort((a, b) => (a.v ?? 0) - (b.v ?? 0));
  if (told.length === 0) return { vMedian: null, vBest: null, bestYMm: null, disappears: null };
  const [middle] = told.slice(told.length >> 1);
  const best = safestBest(curve);
  const gone = told.filter(({ v, leftOut }) => (v ?? 0) < disappearsBelow && !leftOut);
  return {
    vMedian: middle.v,
    vBest: best?.v ?? null,
    bestYMm: best?.yMm ?? null,
    disappears: gone.length / curve.length,
  };
}

/**
 * The best rip of a curve; of many alike the one whose neighbours are quiet farthest around, so
 * that a fence set a little off does no harm. A rip through an area that was left out is the best
 * only where every rip is.
 */
export function safestBest(curve: readonly RipCost[]): RipCost | null {
  const isClear = curve.some(({ v, leftOut }) => v !== null && !leftOut);
  const costOf = (point: RipCost | undefined) =>
    (isClear && point?.leftOut ? null : point?.v) ?? Number.POSITIVE_INFINITY;
  const quiet = Math.min(...curve.map(costOf));
  if (!Number.isFinite(quiet)) return null;
  const reachAt = (i: number) => {
    let reach = 0;
    const alike = (k: number) => costOf(curve[k]) <= Math.max(quiet, 0.25);
    while (alike(i - reach - 1) && alike(i + reach + 1)) reach++;
    return reach;
  };
  let best: { point: RipCost; reach: number } | null = null;
  for (const [i, point] of curve.entries()) {
    if (costOf(point) !== quiet) continue;
    const reach = reachAt(i);
    if (!best || reach > best.reach) best = { point, reach };
  }
  return best?.point ?? null;
}
