import type { ForecastResult } from '../results/forecastResult.js';
import { endSlides } from './frontCut.js';
import type { ReglueSpec } from './reglue.js';
import { reglueFront, reglueRips } from './reglueSpecs.js';

/**
 * How the pieces of a forecast are put together again: the front of a placement in its opening,
 * or the panel with the rips that were asked for, or with the best rip when nothing was asked.
 *
 * @param rank which placement, default 1. @param slid with the rails slid as the placement
 *   advises, default false: everything at its station.
 * @returns null when there is nothing to cut.
 */
export function reglueOfForecast(
  result: ForecastResult,
  { rank = 1, slid = false }: { readonly rank?: number; readonly slid?: boolean } = {},
): ReglueSpec | null {
  const { panel, placements, search, rips, summary, revealMm, kerfMm } = result;
  const placement = placements.find((place) => place.rank === rank);
  if (placement) {
    const stations = endSlides(search?.ends ?? 'stay', kerfMm);
    return reglueFront(panel, placement, result, slid ? placement.slides : stations, revealMm);
  }
  const ripsMm = rips.length > 0 ? rips.map(({ yMm }) => yMm) : [summary.bestYMm];
  const told = ripsMm.filter((yMm) => yMm !== null);
  return told.length > 0 ? reglueRips(panel, told, result) : null;
}
