import type { ForecastImagined, ForecastSummary } from '../../core/results/forecastResult.js';
import { clauseOfV } from './wordOfV.js';

/** `a rip disappears over 59 % of the width; a typical one disappears`. */
export function summaryText({ disappears, vMedian }: ForecastSummary): string {
  if (disappears === null) return 'no rip can be told';
  const share = `a rip disappears over ${Math.round(100 * disappears)} % of the width`;
  return `${share}; a typical one ${clauseOfV(vMedian)}`;
}

/** The same panel from other wood, in a sentence. */
export function describeImagined({ cut, ringAngleDeg, summary }: ForecastImagined): string {
  return `Were it ${cut} (rings at ${Math.round(ringAngleDeg)} degrees), ${summaryText(summary)}.`;
}
