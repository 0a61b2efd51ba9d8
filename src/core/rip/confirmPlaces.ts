import type { ForecastLines } from './forecastLines.js';
import { type FoundPlacement, type TriedPlacement, unjudged } from './foundPlacement.js';
import type { CutLoss, PieceSlides } from './frontCut.js';
import { placementCost } from './placementCost.js';

/** Places with the same two rips: only where along them the front lies differs. */
export type PlaceRow = readonly TriedPlacement[];

/** Rows whose quick cost is within this factor of the best confirmed one may yet be the best. */
const nearFactor = 3;
/** Below this both rips' joints, two pieces each, disappear (V 0.5) and the readings err by as much. */
const leastCost = 4 * 0.5 ** 3;
/** Each row is two rips to read; more than this many take too long. */
const mostRows = 6;

/**
 * Costs by the score's own reading for the rows of places that may hold the best: the quick reading
 * of all places errs by about a tenth in V, so those it calls the best need a second look. The row
 * with the least quick cost is read first, and so on while one may still beat the best.
 *
 * @param rows every place tried, cost by the quick reading. @param orderOf -1, 0, 1 as of `sort`.
 * @returns the same rows, those read again with their new costs.
 */
export function confirmPlaces(
  lines: ForecastLines,
  rows: readonly PlaceRow[],
  loss: CutLoss,
  slides: PieceSlides,
  orderOf: (a: TriedPlacement, b: TriedPlacement) => number,
): PlaceRow[] {
  const bestOf = (row: PlaceRow) => row.reduce((a, b) => (orderOf(b, a) < 0 ? b : a));
  const quick = rows.map((row, index) => ({ index, best: bestOf(row) }));
  quick.sort((a, b) => orderOf(a.best, b.best));
  const confirmed = [...rows];
  let best: TriedPlacement | null = null;
  for (const { index, best: hoped } of quick.slice(0, mostRows)) {
    const limit = best ? nearFactor * Math.max(leastCost, best.cost) : Number.POSITIVE_INFINITY;
    if (best && (hoped.cost > limit || unjudged(hoped) > unjudged(best))) break;
    confirmed[index] = rows[index].map((place) =>
      confirmPlace(lines.ripsAsScored, place, loss, slides),
    );
    const found = bestOf(confirmed[index]);
    if (!best || orderOf(found, best) < 0) best = found;
  }
  return confirmed;
}

/** One place by the reading of `lines`. */
export function confirmPlace(
  lines: ForecastLines,
  place: TriedPlacement,
  loss: CutLoss,
  slides: PieceSlides,
): FoundPlacement {
  return { ...place, ...placementCost(lines, place.front, loss, slides) };
}
