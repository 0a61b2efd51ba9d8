import type { Progress } from '../progress.js';
import type {
  ForecastCutPart,
  ForecastPlacement,
  ForecastResult,
  ForecastSegment,
  ForecastWorst,
} from '../results/forecastResult.js';
import type { PlanedEdge } from '../rip/forecastDepth.js';
import type { ForecastLines } from '../rip/forecastLines.js';
import type { FoundPlacement } from '../rip/foundPlacement.js';
import { endSlides, type PieceSlides, ripLossMm } from '../rip/frontCut.js';
import type { PlacementWish } from '../rip/placementBox.js';
import { type PlacementCost, placementCost, type SegmentCost } from '../rip/placementCost.js';
import { railSlideMm } from '../rip/railSlides.js';
import { regluedSeams } from '../rip/regluedSeams.js';
import { flushEnds } from '../rip/reglueSpecs.js';
import { searchPlacements } from '../rip/searchPlacements.js';
import { visibilityWord } from '../visibility/visibilityWord.js';
import type { ForecastOptions } from './forecastOptions.js';

/** What is found out about a front. */
export interface FrontForecast {
  readonly placements: readonly ForecastPlacement[];
  readonly search: ForecastResult['search'];
  readonly reglued: ForecastResult['reglued'];
  /** The best placement's rails along the front, for planing. */
  readonly edges: readonly PlanedEdge[];
}

/** Where a front is best taken from, its joints and reveals, and the best slides. Null: none asked. */
export function forecastFront(
  lines: ForecastLines,
  options: ForecastOptions,
  progress?: Progress,
): FrontForecast | null {
  const { ends, eitherWayUp } = options;
  const wish = frontWish(lines, options);
  if (!wish) return null;
  const search = searchPlacements(lines, wish, ends, eitherWayUp, options.places, (f, what) =>
    progress?.(0.7 * f, what),
  );
  const placements = search.best.map((found, i) => {
    progress?.(0.7 + (0.2 * i) / search.best.length, `sliding the pieces of place ${i + 1}`);
    return placementOf(lines.asScored, options, found, i + 1);
  });
  const [best] = search.best;
  const stations = endSlides(ends, options.kerfMm);
  progress?.(0.9, 'gluing it up again');
  const { startMm, endMm } = flushEnds(lines.widthMm, stations);
  return {
    placements,
    search: {
      ...{ tried: search.tried, vMedian: Math.cbrt(search.medianCost), ends },
      clear: search.clear,
    },
    reglued: {
      widthMm: endMm - startMm,
      heightMm: lines.heightMm - 2 * ripLossMm(options),
      seams: regluedSeams(lines.asScored, best, options, stations, options.revealMm),
    },
    edges: best.segments
      .filter(({ segment: { piece, kind } }) => piece === 'front' && kind === 'rip')
      .map(({ segment }) => segment),
  };
}

/** What the search is asked; null when no front is wanted. */
export function frontWish(
  panel: { readonly widthMm: number; readonly heightMm: number },
  options: ForecastOptions,
): PlacementWish | null {
  const { front, within } = options;
  if (!front) return null;
  const roomMm = Math.min(
    (panel.widthMm - front.widthMm) / 2 - options.kerfMm,
    (panel.heightMm - front.heightMm) / 2 - ripLossMm(options),
  );
  const usualMm = Math.min(25.4, Math.max(0, roomMm / 2));
  return { ...front, loss: options, within, marginMm: options.marginMm ?? usualMm };
}

function placementOf(
  lines: ForecastLines,
  options: ForecastOptions,
  found: FoundPlacement,
  rank: number,
): ForecastPlacement {
  const { ends, kerfMm, spareMm } = options;
  const stations = endSlides(ends, kerfMm);
  const rail = (which: 'upper' | 'lower') =>
    railSlideMm(lines, found.front, options, stations, which, spareMm);
  const slides: PieceSlides = { ...stations, upper: rail('upper'), lower: rail('lower') };
  const slid = placementCost(lines, found.front, options, slides);
  const otherEnds = ends === 'stay' ? 'close' : 'stay';
  const other = placementCost(lines, found.front, options, endSlides(otherEnds, kerfMm));
  const length = (set: PieceSlides) => {
    const { startMm, endMm } = flushEnds(lines.widthMm, set);
    return endMm - startMm;
  };
  return {
    rank,
    ...found.front,
    v: Math.cbrt(found.cost),
    cost: found.cost,
    worst: worstOf(found),
    slides,
    vAtSlides: Math.cbrt(slid.cost),
    slidesCostMm: length(stations) - length(slides),
    segments: found.segments.map((one, i) => segmentOf(one, slid.segments[i])),
    turned: found.turned,
    otherEnds: { ends: otherEnds, v: Math.cbrt(other.cost), worst: worstOf(other) },
    leftOut: found.leftOut,
    notes: leftOutNotes(found.leftOut),
  };
}

const partNames: Readonly<Record<ForecastCutPart, string>> = {
  front: 'the front’s face',
  'upper rip': 'the rip above the front',
  'lower rip': 'the rip below the front',
  'left crosscut': 'the left crosscut',
  'right crosscut': 'the right crosscut',
};

/** What of a place was not judged, in the user's words. */
function leftOutNotes(parts: readonly ForecastCutPart[]): string[] {
  if (parts.length === 0) return [];
  const names = parts.map((part) => partNames[part]);
  const last = names.pop();
  const all = names.length > 0 ? `${names.join(', ')} and ${last}` : last;
  return [`An area that you left out lies on ${all}; what is seen there is not judged.`];
}

function worstOf({ worst }: PlacementCost): ForecastWorst {
  return { piece: worst.segment.piece, edge: worst.segment.edge, v: worst.v };
}

function segmentOf({ segment, v, cue }: SegmentCost, slid: SegmentCost): ForecastSegment {
  const { piece, edge, glued, kind, etaAMm, etaBMm, fromMm, toMm } = segment;
  const middle = (etaAMm + etaBMm) / 2;
  const line =
    kind === 'rip'
      ? { x1Mm: fromMm, y1Mm: middle, x2Mm: toMm, y2Mm: middle }
      : { x1Mm: middle, y1Mm: fromMm, x2Mm: middle, y2Mm: toMm };
  const word = v === null ? null : visibilityWord(v);
  return { piece, edge, glued, line, v, cue, word, vAtSlides: slid.v };
}
