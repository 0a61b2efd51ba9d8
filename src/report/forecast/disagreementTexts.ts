import type { ForecastResult } from '../../core/results/forecastResult.js';
import { capitalise } from '../words/capitalise.js';
import { joinWords } from '../words/joinWords.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';

/** Where a rip shows more, or less, than the slope of its grain lets expect: a sentence a reason. */
export function disagreementTexts(
  disagreements: ForecastResult['disagreements'],
  units: LengthUnits,
): string[] {
  const byReason = new Map<string, string[]>();
  for (const { fromYMm, toYMm, v, vByAngle, why } of disagreements) {
    const [from, to] = [placeText(fromYMm, units), placeText(toYMm, units)];
    const what = `from the top a rip shows ${v > vByAngle ? 'more' : 'less'} than the slope of the grain there lets expect: ${why}`;
    const where = from === to ? from : `${from} to ${to}`;
    byReason.set(what, [...(byReason.get(what) ?? []), where]);
  }
  return [...byReason].map(([what, where]) => capitalise(`${joinWords(where)} ${what}.`));
}
