import type { ForecastResult } from '../../core/results/forecastResult.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { viewingDistanceText } from '../words/viewingDistanceText.js';

/** What a forecast rests on, one sentence each. */
export function forecastRestsOn(result: ForecastResult, units: LengthUnits): string[] {
  const { panel, kerfMm, dressMm, distanceMm, spareMm, placements, search } = result;
  const { widthMm, heightMm, pxPerMm } = panel;
  const size = `${placeText(widthMm, units)} by ${placeText(heightMm, units)}`;
  const dressed = dressMm > 0 ? `, ${smallLengthText(dressMm, units)} dressed off each edge` : '';
  const sentences = [
    `The panel is ${size}, with ${pxPerMm.toFixed(1)} pixels of the photo to the millimetre${pxPerMm < 3 ? ': too coarse to judge fine grain; step closer' : ''}.`,
    `Each cut takes ${smallLengthText(kerfMm, units)}${dressed}; measure the kerf of your own blade.`,
    `Judged for someone who stands ${viewingDistanceText(distanceMm, units)} away, as the joint will look well glued and planed flush; a glue line would come on top.`,
    `Slides up to ${smallLengthText(spareMm, units)} were tried: that much length must be left over.`,
    search
      ? `${search.tried.toLocaleString('en')} places of the front were tried on a grid of 2 mm, the end pieces ${search.ends === 'stay' ? 'left at their stations (the opening is two kerfs longer than the front)' : 'moved in by a kerf each (tight opening)'}.`
      : '',
    placements.length > 0 ? caution : '',
  ];
  return sentences.filter(Boolean);
}

/** Common practice, no published source; the machine's own manual decides. */
const caution =
  'A short end piece is crosscut on a sled with a stop, never against the rip fence; a strip that bows after ripping is rested or jointed before it meets the fence again. The saw’s own manual, local codes and your training come first.';
