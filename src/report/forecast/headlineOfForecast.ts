import type { ForecastResult } from '../../core/results/forecastResult.js';
import { capitalise } from '../words/capitalise.js';
import { joinWords } from '../words/joinWords.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { placementLook, placementPlace } from './describePlacement.js';
import { clauseOfV, wordOfV } from './wordOfV.js';

/** The answer in a breath: where to take the front, what the rips would show, or where to rip. */
export function headlineOfForecast(result: ForecastResult, units: LengthUnits): string {
  if (result.placements.length > 0) return frontHeadline(result, units);
  if (result.rips.length > 0) return ripsHeadline(result, units);
  return curveHeadline(result, units);
}

function frontHeadline({ placements, search }: ForecastResult, units: LengthUnits): string {
  const [best] = placements;
  const turn = best.turned ? 'Turn the panel so that its lower edge is up, and take' : 'Take';
  const gain =
    search && wordOfV(search.vMedian) !== wordOfV(best.v)
      ? ` At a typical place (${search.tried.toLocaleString('en')} were tried) the cut ${clauseOfV(search.vMedian)}.`
      : '';
  const knot =
    best.leftOut.length > 0 ? ' No place keeps it clear of the areas that you left out.' : '';
  return `${turn} the front ${placementPlace(best, units)}: ${placementLook(best)}.${knot}${gain}`;
}

function ripsHeadline({ rips }: ForecastResult, units: LengthUnits): string {
  const clauses = rips.map(
    ({ yMm, visibility: { v } }) => `a rip ${placeText(yMm, units)} from the top ${clauseOfV(v)}`,
  );
  return `${capitalise(joinWords(clauses))}.`;
}

function curveHeadline({ summary, curve }: ForecastResult, units: LengthUnits): string {
  if (summary.bestYMm === null) return 'No rip can be forecast from this photo.';
  const best = `The quietest place to rip is ${placeText(summary.bestYMm, units)} from the top, where the joint ${clauseOfV(summary.vBest)}.`;
  const worst = curve.reduce((a, b) => ((b.v ?? 0) > (a.v ?? 0) ? b : a));
  if ((worst.v ?? 0) < 1) return `${best} Nowhere on this panel would a rip be seen unless told.`;
  return `${best} Keep away from ${placeText(worst.yMm, units)}, where it ${clauseOfV(worst.v)}.`;
}
