import type { Cue } from '../results/visibilityResult.js';
import { safestBest } from '../rip/curveSummary.js';
import type { RipCost } from '../rip/ripCurve.js';

/** What a candidate's rips say of it as a whole; nulls where none can be told. */
export interface CurveVerdict {
  /** Median of V over all rips that can be told. */
  readonly vMedian: number | null;
  /** The best rip and its middle, mm from the top. */
  readonly vBest: number | null;
  readonly bestYMm: number | null;
  /** What the eye catches in the rip nearest to the median. */
  readonly cue: Cue | null;
}

/** Sums up every rip of one candidate. */
export function curveVerdict(curve: readonly RipCost[]): CurveVerdict {
  const told = curve
    .flatMap(({ v, cue }) => (v === null ? [] : [{ v, cue }]))
    .sort((a, b) => a.v - b.v);
  const [low, high] = [told[(told.length - 1) >> 1], told[told.length >> 1]];
  const best = safestBest(curve);
  if (!low || !high || !best) return { vMedian: null, vBest: null, bestYMm: null, cue: null };
  return { vMedian: (low.v + high.v) / 2, vBest: best.v, bestYMm: best.yMm, cue: high.cue };
}

/** The better candidate first: by the median rip, ties by the best one; the untold last. */
export function byVerdict(
  a: Pick<CurveVerdict, 'vMedian' | 'vBest'>,
  b: Pick<CurveVerdict, 'vMedian' | 'vBest'>,
): number {
  return order(a.vMedian, b.vMedian) || order(a.vBest, b.vBest);
}

/** Ascending, null last. */
export function order(a: number | null, b: number | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return a - b;
}
