import type { ForecastResult } from '../../core/results/forecastResult.js';
import { capitalise } from '../words/capitalise.js';
import { countWord } from '../words/countWord.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { describeDepth } from './describeDepth.js';
import { describeImagined, summaryText } from './describeImagined.js';
import { describePlacement } from './describePlacement.js';
import { describeRip } from './describeRip.js';
import { disagreementTexts } from './disagreementTexts.js';
import { headlineOfForecast } from './headlineOfForecast.js';

/** A forecast in words. */
export interface ForecastWords {
  readonly headline: string;
  readonly lines: readonly string[];
}

/** Says a forecast as a maker would at the bench: the answer, what to know of the photo, then the rest. */
export function describeForecast(result: ForecastResult, units: LengthUnits): ForecastWords {
  return {
    headline: headlineOfForecast(result, units),
    lines: [
      ...result.notes,
      ...result.rips.map((rip) => describeRip(rip, units)),
      ...result.placements.map((place) => describePlacement(place, units)),
      `${capitalise(summaryText(result.summary))}.`,
      ...disagreementTexts(result.disagreements, units),
      ...(result.curve.length > 0 ? [widthText(result, units)] : []),
      ...(result.depth ? [describeDepth(result.depth, units)] : []),
      ...result.imagined.map(describeImagined),
    ],
  };
}

/** What the cuts take of the panel. */
export function widthText(result: ForecastResult, units: LengthUnits): string {
  const { lossMm, dressMm, panel, reglued, placements } = result;
  const rips = placements.length > 0 ? 2 : Math.max(1, result.rips.length);
  const dressed = dressMm > 0 ? ' with the edges dressed' : ' before dressing';
  const took = `${countWord(rips)} ${rips === 1 ? 'rip takes' : 'rips take'} ${smallLengthText(rips * lossMm, units)} of the width${dressed}`;
  const leftMm = reglued?.heightMm ?? panel.heightMm - rips * lossMm;
  return capitalise(`${took}; the panel comes out ${placeText(leftMm, units)} wide.`);
}
