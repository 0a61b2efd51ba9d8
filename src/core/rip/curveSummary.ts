import type { ForecastSummary } from '../results/forecastResult.js';
import type { RipCost } from './ripCurve.js';

/** Below this a joint disappears. */
const disappearsBelow = 0.5;

/** How the rips of one face stand as a whole; nulls where none could be told. */
export function curveSummary(curve: readonly RipCost[]): ForecastSummary {
  const told = curve.filter((point) => point.v !== null).sort((a, b) => (a.v ?? 0) - (b.v ?? 0));
  if (told.length === 0) return { vMedian: null, vBest: null, bestYMm: null, disappears: null };
  const [middle] = told.slice(told.length >> 1);
  return {
    vMedian: middle.v,
    vBest: told[0].v,
    bestYMm: safestBest(curve)?.yMm ?? null,
    disappears: told.filter(({ v }) => (v ?? 0) < disappearsBelow).length / curve.length,
  };
}

/**
 * The best rip of a curve; of many alike the one whose neighbours are quiet farthest around, so
 * that a fence set a little off does no harm.
 */
export function safestBest(curve: readonly RipCost[]): RipCost | null {
  const quiet = Math.min(...curve.map(({ v }) => v ?? Number.POSITIVE_INFINITY));
  if (!Number.isFinite(quiet)) return null;
  const reachAt = (i: number) => {
    let reach = 0;
    const alike = (k: number) => (curve[k]?.v ?? Number.POSITIVE_INFINITY) <= Math.max(quiet, 0.25);
    while (alike(i - reach - 1) && alike(i + reach + 1)) reach++;
    return reach;
  };
  let best: { point: RipCost; reach: number } | null = null;
  for (const [i, point] of curve.entries()) {
    if (point.v !== quiet) continue;
    const reach = reachAt(i);
    if (!best || reach > best.reach) best = { point, reach };
  }
  return best?.point ?? null;
}
