import type { Progress } from '../progress.js';
import { confirmPlace, confirmPlaces, type PlaceRow } from './confirmPlaces.js';
import type { ForecastLines } from './forecastLines.js';
import { type FoundPlacement, type TriedPlacement, unjudged } from './foundPlacement.js';
import { type EndPieces, endSlides } from './frontCut.js';
import { leftOutParts } from './leftOutParts.js';
import type { PanelBox } from './panelBox.js';
import { type PlacementWish, placementBox } from './placementBox.js';
import { placementCost } from './placementCost.js';
import { ripStepMm } from './ripCurve.js';

/** What was searched. */
export interface PlacementSearch {
  /** The best few that really differ, the best first. */
  readonly best: readonly FoundPlacement[];
  readonly tried: number;
  /** How many of them are clear of every area that was left out. */
  readonly clear: number;
  /** Cost of the middle one of all places tried. */
  readonly medianCost: number;
}

/**
 * Tries every place of a front on a 2 mm grid and returns the best few that really differ.
 *
 * A place whose front and cuts are clear of all areas left out comes before one with a knot in the
 * front's face, and that before one with a cut through a knot: what is not judged is not cheap.
 *
 * Cost: sum of V^3 over all joints and reveals; of places alike the one with the lower worst
 * segment, then the one whose neighbours 2 mm away cost less, then the one nearest to the
 * panel's middle. Each line of the panel is read once; a place is then a few sums. The rows that may
 * hold the best are then read again as a score reads them (`confirmPlaces`), and so is every place
 * reported.
 *
 * @param ends what becomes of the end pieces. @param eitherWayUp the panel may be turned by 180
 *   degrees: the allowed box then lies at its opposite corner.
 */
export function searchPlacements(
  lines: ForecastLines,
  wish: PlacementWish,
  ends: EndPieces,
  eitherWayUp: boolean,
  most: number,
  progress?: Progress,
): PlacementSearch {
  const slides = endSlides(ends, wish.loss.kerfMm);
  const boxes = [{ box: placementBox(lines, wish), turned: false }];
  if (eitherWayUp && wish.within) {
    boxes.push({
      box: placementBox(lines, { ...wish, within: turnedBox(wish.within, lines) }),
      turned: true,
    });
  }
  const grid = boxes.map(({ box, turned }) => ({
    xs: gridBetween(box.x1Mm, box.x2Mm),
    ys: gridBetween(box.y1Mm, box.y2Mm),
    turned,
  }));
  const rows = grid.reduce((sum, { ys }) => sum + ys.length, 0);
  let done = 0;
  const quick: TriedPlacement[][] = grid.flatMap(({ xs, ys, turned }) =>
    ys.map((yMm) => {
      progress?.((0.7 * done++) / rows, 'trying every place of the front');
      return xs.map((xMm) => {
        const front = { xMm, yMm, widthMm: wish.widthMm, heightMm: wish.heightMm };
        const { cost, worst } = placementCost(lines, front, wish.loss, slides);
        return { front, cost, worst, turned, leftOut: leftOutParts(lines, front, wish.loss) };
      });
    }),
  );
  const costs = quick.flat().map(({ cost }) => cost);
  progress?.(0.7, 'looking again at the best');
  const tried = confirmPlaces(lines, quick, wish.loss, slides, byCost);
  const best = bestThatDiffer(ranked(tried, lines), most);
  const told = best.map((place) => confirmPlace(lines.asScored, place, wish.loss, slides));
  return {
    best: told.sort(byCost),
    tried: costs.length,
    clear: quick.flat().filter(({ leftOut }) => leftOut.length === 0).length,
    medianCost: costs.sort((a, b) => a - b)[costs.length >> 1],
  };
}

function turnedBox(box: PanelBox, { widthMm, heightMm }: ForecastLines): PanelBox {
  return {
    x1Mm: widthMm - box.x2Mm,
    y1Mm: heightMm - box.y2Mm,
    x2Mm: widthMm - box.x1Mm,
    y2Mm: heightMm - box.y1Mm,
  };
}

/** Grid lines between two places, on the panel's own grid; the middle when none fits. */
function gridBetween(from: number, to: number): number[] {
  const first = Math.ceil(from / ripStepMm - 1e-9);
  const count = Math.floor(to / ripStepMm + 1e-9) - first + 1;
  if (count < 1) return [(from + to) / 2];
  return Array.from({ length: count }, (_, i) => (first + i) * ripStepMm);
}

/** The better of two places first: what is judged, then the cost, then the worst segment. */
function byCost(a: TriedPlacement, b: TriedPlacement): number {
  const worst = (place: TriedPlacement) => place.worst.v ?? 0;
  return unjudged(a) - unjudged(b) || a.cost - b.cost || worst(a) - worst(b);
}

function ranked(tried: readonly PlaceRow[], lines: ForecastLines) {
  const roughness = new Map<TriedPlacement, number>();
  for (const [j, row] of tried.entries()) {
    for (const [i, place] of row.entries()) {
      const around = [row[i - 1], row[i + 1], tried[j - 1]?.[i], tried[j + 1]?.[i]];
      const near = around.filter((other) => other?.turned === place.turned);
      roughness.set(place, near.reduce((s, other) => s + other.cost, 0) / Math.max(1, near.length));
    }
  }
  const off = ({ front }: TriedPlacement) =>
    Math.hypot(
      (front.xMm + front.widthMm / 2) / lines.widthMm - 0.5,
      (front.yMm + front.heightMm / 2) / lines.heightMm - 0.5,
    );
  const rough = (place: TriedPlacement) => roughness.get(place) ?? 0;
  return tried.flat().sort((a, b) => byCost(a, b) || rough(a) - rough(b) || off(a) - off(b));
}

/** Places nearer than this to a better one are the same place to a maker, mm; x at least. */
const alikeMm = { x: 40, y: 10 };

function bestThatDiffer(places: readonly TriedPlacement[], most: number): TriedPlacement[] {
  const chosen: TriedPlacement[] = [];
  for (const place of places) {
    if (chosen.length === most) break;
    const differs = chosen.every(
      ({ front }) =>
        Math.hypot(
          (front.xMm - place.front.xMm) / Math.max(alikeMm.x, front.widthMm / 5),
          (front.yMm - place.front.yMm) / alikeMm.y,
        ) >= 1,
    );
    if (differs) chosen.push(place);
  }
  return chosen;
}
