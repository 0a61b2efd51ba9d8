import type { ForecastPlacement } from '../../core/results/forecastResult.js';
import { pictureTable } from '../html/pictureTable.js';
import { capitalise } from '../words/capitalise.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import {
  placementLook,
  placementOtherEnds,
  placementPlace,
  placementSlides,
} from './describePlacement.js';

/** The best places side by side, each with the panel glued up again; empty when none was asked. */
export function placementTable(
  placements: readonly ForecastPlacement[],
  hrefs: readonly string[],
  units: LengthUnits,
): string {
  if (placements.length === 0) return '';
  const rows = placements.map((place, i) => ({
    pictureHref: hrefs[i] ?? '',
    name: `${place.rank}`,
    cells: [
      `${capitalise(placementPlace(place, units))}${place.turned ? ', lower edge up' : ''}`,
      [
        `${capitalise(placementLook(place))} (V ${place.v.toFixed(2)} all together)`,
        ...place.notes,
      ].join('. '),
      placementSlides(place, units) || 'Nothing to gain',
      placementOtherEnds(place),
    ],
  }));
  return pictureTable(['Where', 'How it looks', 'Sliding the rails', 'The end pieces'], rows);
}
