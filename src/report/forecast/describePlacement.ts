import type { ForecastPlacement } from '../../core/results/forecastResult.js';
import { joinWords } from '../words/joinWords.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { segmentName } from './segmentName.js';
import { slideText } from './slideText.js';
import { clauseOfV, wordOfV } from './wordOfV.js';

/** Where a placement is: `1 1/4 in from the left, 2 3/4 in from the top`. */
export function placementPlace({ xMm, yMm }: ForecastPlacement, units: LengthUnits): string {
  return `${placeText(xMm, units)} from the left, ${placeText(yMm, units)} from the top`;
}

/** What a placement shows: `every joint disappears`, or its worst place. */
export function placementLook({ worst, segments }: ForecastPlacement): string {
  const untold = segments.filter(({ v }) => v === null).length;
  if (untold === segments.length) return 'how it would look cannot be told';
  if ((worst.v ?? 0) < 0.5) {
    return untold === 0 ? 'every joint disappears' : 'every joint that can be told disappears';
  }
  return `the worst, the ${segmentName(worst)}, ${clauseOfV(worst.v)}`;
}

/** What slides of the rails gain: a sentence, or nothing when they gain nothing. */
export function placementSlides(place: ForecastPlacement, units: LengthUnits): string {
  const { slides, vAtSlides, slidesCostMm, segments } = place;
  const moves = (['upper', 'lower'] as const)
    .filter((rail) => slides[rail] !== 0)
    .map((rail) => `the ${rail} rail ${slideText(slides[rail], units)}`);
  if (moves.length === 0) return '';
  const worst = Math.max(...segments.map((segment) => segment.vAtSlides ?? 0));
  const cost = slidesCostMm > 0 ? `, for ${smallLengthText(slidesCostMm, units)} of length` : '';
  const same = wordOfV(worst) === wordOfV(place.worst.v);
  const then = same
    ? `all together show less, though the worst still ${clauseOfV(worst)}`
    : `the worst then ${clauseOfV(worst)}`;
  const gain = vAtSlides < 0.5 ? 'nothing is seen any more' : then;
  return `Slide ${joinWords(moves)}${cost}: ${gain}.`;
}

/** The other way with the end pieces. */
export function placementOtherEnds({ otherEnds }: ForecastPlacement): string {
  const way =
    otherEnds.ends === 'close'
      ? 'With the end pieces moved in by a kerf'
      : 'With the end pieces left at their stations';
  const { worst } = otherEnds;
  if ((worst.v ?? 0) < 0.5) return `${way} every joint disappears as well.`;
  return `${way} the worst, the ${segmentName(worst)}, ${clauseOfV(worst.v)}.`;
}

/** One placement in full. */
export function describePlacement(place: ForecastPlacement, units: LengthUnits): string {
  const turned = place.turned ? ', the panel turned so that its lower edge is up' : '';
  return [
    `Place ${place.rank}, ${placementPlace(place, units)}${turned}: ${placementLook(place)}.`,
    placementSlides(place, units),
    placementOtherEnds(place),
    ...place.notes,
  ]
    .filter(Boolean)
    .join(' ');
}
