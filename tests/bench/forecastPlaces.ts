import type { PanelPhoto } from '../../dist/core/image/panelPhoto.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { endSlides } from '../../dist/core/rip/frontCut.js';
import { frontSegments } from '../../dist/core/rip/frontSegments.js';
import { placementBox } from '../../dist/core/rip/placementBox.js';
import { reachOfSegment } from '../../dist/core/rip/placementCost.js';
import { searchPlacements } from '../../dist/core/rip/searchPlacements.js';
import type { LineMeasures } from '../../dist/core/seam/lineMeasures.js';
import { jointMeasures, readSide } from '../../dist/core/seam/lineMeasures.js';
import { ownDistancesMm } from '../../dist/core/seam/ownLines.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
import { seamFrame } from '../../dist/core/seam/seamFrame.js';
import { seamVisibility } from '../../dist/core/seam/seamVisibility.js';
import { type LineSide, type SideReading, seamWood } from '../../dist/core/seam/seamWood.js';
import { onePiecePanel } from '../../dist/core/wood/onePiecePanel.js';
import { photographed } from './forecastPhoto.js';
import { median, rankCorrelation } from './forecastStatistics.js';

const panel = { widthMm: 220, heightMm: 130 };
const loss = { kerfMm: 3.175, dressMm: 0 };
const wish = { widthMm: 110, heightMm: 50, loss, marginMm: 22, within: null };

/** The search's choice against every place scored by picture. */
export interface PlaceResult {
  readonly seed: number;
  readonly places: number;
  /** Lowest cost of all places, of the chosen one, and the middle one, all by brute force. */
  readonly least: number;
  readonly chosen: number;
  readonly middle: number;
  readonly rank: number;
}

/**
 * Brute force: each joint of each place is made anew from the photo's lines and given to the
 * score's own `seamVisibility` window by window, no sums kept.
 */
export async function forecastPlaces(seeds: readonly number[]): Promise<PlaceResult[]> {
  const results: PlaceResult[] = [];
  for (const seed of seeds) {
    const board = {
      seed,
      setting: 'softwood',
      cut: 'flatsawn',
      lengthMm: 260,
      widthMm: 170,
    } as const;
    const photo = await photographed(onePiecePanel({ board, ...panel, uMm: 20, vMm: 20 }), seed);
    results.push(bruteForce(photo, seed));
    process.stderr.write(`places ${seed}\r`);
  }
  return results;
}

function bruteForce(photo: PanelPhoto, seed: number): PlaceResult {
  const lines = forecastLines(panelPlanes(photo), photo, 600);
  const search = searchPlacements(lines, wish, 'stay', false, 1000);
  const frame = seamFrame({ x1Mm: 0, y1Mm: 0, x2Mm: photo.widthMm, y2Mm: 0 });
  const wood = seamWood(panelPlanes(photo), frame, 0, photo.heightMm, Number.POSITIVE_INFINITY);
  const box = placementBox(photo, wish);
  const grid = (from: number, to: number) => {
    const first = Math.ceil(from / 2 - 1e-9);
    return Array.from({ length: Math.floor(to / 2 + 1e-9) - first + 1 }, (_, i) => 2 * (first + i));
  };
  // Sides are read once a line; joints, windows and visibilities anew for every place.
  const read = new Map<string, SideReading>();
  const side = (etaMm: number, which: -1 | 1): LineSide => {
    const key = `${etaMm} ${which}`;
    const reading = read.get(key) ?? readSide({ wood, etaMm }, which, false);
    read.set(key, reading);
    return { wood, etaMm, reading };
  };
  const costs = new Map<string, number>();
  for (const yMm of grid(box.y1Mm, box.y2Mm)) {
    for (const xMm of grid(box.x1Mm, box.x2Mm)) {
      const front = { xMm, yMm, widthMm: wish.widthMm, heightMm: wish.heightMm };
      const slides = endSlides('stay', loss.kerfMm);
      let cost = 0;
      for (const segment of frontSegments(front, loss, slides, photo.widthMm)) {
        if (segment.kind === 'crosscut') continue;
        const reach = reachOfSegment(lines, front, segment);
        cost += pictured(side, segment, reach) ** 3;
      }
      costs.set(`${xMm} ${yMm}`, cost);
    }
  }
  const { front } = search.best[0]!;
  const all = [...costs.values()];
  const compared = search.best.map((place) => [
    place.cost,
    costs.get(`${place.front.xMm} ${place.front.yMm}`) ?? 0,
  ]);
  return {
    ...{ seed, places: all.length, least: Math.min(...all), middle: median(all) },
    chosen: costs.get(`${front.xMm} ${front.yMm}`) ?? Number.NaN,
    rank: rankCorrelation(
      compared.map(([a]) => a!),
      compared.map(([, b]) => b!),
    ),
  };
}

function pictured(
  side: (etaMm: number, which: -1 | 1) => LineSide,
  {
    etaAMm,
    etaBMm,
    fromMm,
    toMm,
  }: { etaAMm: number; etaBMm: number; fromMm: number; toMm: number },
  reach: { aMm: number; bMm: number },
): number {
  const part = (line: LineMeasures) => ({
    ...line,
    windows: line.windows.filter(({ atMm }) => atMm >= fromMm && atMm <= toMm),
  });
  const joint = (a: number, b: number) =>
    part(jointMeasures(side(a, -1), side(b, 1), (600 * Math.PI) / 180));
  const away = ownDistancesMm(reach);
  const etas = [...away.a.map((d) => etaAMm - d), ...away.b.map((d) => etaBMm + d)];
  const own = etas.map((eta) => joint(eta, eta)).filter(({ windows }) => windows.length > 0);
  return seamVisibility(joint(etaAMm, etaBMm), own, 600).v ?? 0;
}
