import { safestBest } from './curveSummary.js';
import type { ForecastLines } from './forecastLines.js';
import { type RipCost, ripCost } from './ripCurve.js';

/** A curve whose best rip was looked at again. */
export interface ConfirmedCurve {
  readonly curve: readonly RipCost[];
  readonly best: RipCost | null;
}

/** More looks than this take too long. */
const mostLooks = 4;

/**
 * Reads again, as a score does, the rips that the quick curve calls the best, until one still is:
 * the rip that a maker will saw. Rips that were asked for are read so too.
 *
 * @param askedMm middles of rips asked for; those on the curve's grid get the score's reading.
 */
export function confirmCurve(
  lines: ForecastLines,
  quick: readonly RipCost[],
  lossMm: number,
  askedMm: readonly number[],
): ConfirmedCurve {
  const curve = [...quick];
  const looked = new Set<number>();
  const look = (index: number) => {
    const { yMm, leftOut } = curve[index];
    const cost = ripCost(lines.asScored.rip, yMm - lossMm / 2, lossMm, lines.heightMm);
    curve[index] = { ...cost, yMm, ...(leftOut && { leftOut }) };
    looked.add(index);
  };
  const sameMm = 1e-3;
  for (const [index, { yMm }] of quick.entries()) {
    if (askedMm.some((asked) => Math.abs(asked - yMm) < sameMm)) look(index);
  }
  for (let looks = 0; looks < mostLooks; looks++) {
    const best = safestBest(curve);
    if (!best || looked.has(curve.indexOf(best))) return { curve, best };
    look(curve.indexOf(best));
  }
  return { curve, best: safestBest([...looked].map((index) => curve[index])) };
}
