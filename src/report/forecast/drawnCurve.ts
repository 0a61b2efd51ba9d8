import type { ForecastCurvePoint } from '../../core/results/forecastResult.js';
import { cubicMean } from '../../core/visibility/cubicMean.js';

/** One height of the rail. */
export interface DrawnSample {
  readonly yMm: number;
  readonly v: number | null;
}

/**
 * The curve as it is drawn: each rip with its two neighbours, cubic mean, since no fence is set
 * finer than that. Beyond the first and the last rip nothing is told, nor through an area that was
 * left out, unless every rip runs through one.
 */
export function drawnCurve(curve: readonly ForecastCurvePoint[]): DrawnSample[] {
  if (curve.length === 0) return [];
  const isClear = curve.some(({ leftOut }) => !leftOut);
  const step = curve.length > 1 ? curve[1].yMm - curve[0].yMm : 1;
  const drawn = curve.map(({ yMm, v, leftOut }, i) => ({
    yMm,
    v:
      v === null || (isClear && leftOut)
        ? null
        : cubicMean(curve.slice(Math.max(0, i - 1), i + 2).map((p) => p.v)),
  }));
  const first = { yMm: curve[0].yMm - step, v: null };
  const last = { yMm: curve[curve.length - 1].yMm + step, v: null };
  return [first, ...drawn, last];
}
