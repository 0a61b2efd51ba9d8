import type { PanelPhoto } from '../../dist/core/image/panelPhoto.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { type CutLoss, endSlides } from '../../dist/core/rip/frontCut.js';
import { type FrontSegment, frontSegments } from '../../dist/core/rip/frontSegments.js';
import { placementBox } from '../../dist/core/rip/placementBox.js';
import { reachOfSegment } from '../../dist/core/rip/placementCost.js';
import { reglue } from '../../dist/core/rip/reglue.js';
import { reglueRips } from '../../dist/core/rip/reglueSpecs.js';
import { searchPlacements } from '../../dist/core/rip/searchPlacements.js';
import { asFigure } from '../../dist/core/seam/asFigure.js';
import { type LineMeasures, lineMeasures } from '../../dist/core/seam/lineMeasures.js';
import { ownDistancesMm } from '../../dist/core/seam/ownLines.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
import { seamFrame } from '../../dist/core/seam/seamFrame.js';
import type { SeamReach } from '../../dist/core/seam/seamReach.js';
import { seamVisibility } from '../../dist/core/seam/seamVisibility.js';
import { seamWood } from '../../dist/core/seam/seamWood.js';
import { onePiecePanel } from '../../dist/core/wood/onePiecePanel.js';
import { photographed } from './forecastPhoto.js';
import { median, rankCorrelation } from './forecastStatistics.js';

const distanceMm = 600;
const panel = { widthMm: 220, heightMm: 130 };
const front = { widthMm: 110, heightMm: 50 };

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
 * Brute force by picture: for each rip of each place the strip is taken out of the photo, what is
 * left is joined, and the joint is read and judged as a score of a finished panel does, the part
 * of it that each piece of the place lies along.
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
  // A 1/8 in kerf in whole pixels: a picture can be put together in no others.
  const kerfMm = Math.round(3.175 * photo.pxPerMm) / photo.pxPerMm;
  const loss = { kerfMm, dressMm: 0 };
  const wish = { ...front, loss, marginMm: 22, within: null };
  const lines = forecastLines(panelPlanes(photo), photo, distanceMm);
  const search = searchPlacements(lines, wish, 'stay', false, 1000);
  const box = placementBox(photo, wish);
  const grid = (from: number, to: number) => {
    const first = Math.ceil(from / 2 - 1e-9);
    return Array.from({ length: Math.floor(to / 2 + 1e-9) - first + 1 }, (_, i) => 2 * (first + i));
  };
  const pictures = new Map<string, RejoinedRip>();
  const costs = new Map<string, number>();
  for (const yMm of grid(box.y1Mm, box.y2Mm)) {
    for (const xMm of grid(box.x1Mm, box.x2Mm)) {
      const place = { ...front, xMm, yMm };
      const slides = endSlides('stay', loss.kerfMm);
      let cost = 0;
      for (const segment of frontSegments(place, loss, slides, photo.widthMm)) {
        if (segment.kind === 'crosscut') continue;
        const reach = reachOfSegment(lines, place, segment);
        const key = `${segment.etaAMm} ${reach.aMm} ${reach.bMm}`;
        const picture = pictures.get(key) ?? rejoined(photo, segment, loss, reach);
        pictures.set(key, picture);
        cost += pictured(picture, segment) ** 3;
      }
      costs.set(`${xMm} ${yMm}`, cost);
    }
  }
  const chosen = search.best[0]!.front;
  const all = [...costs.values()];
  const compared = search.best.map((place) => [
    place.cost,
    costs.get(`${place.front.xMm} ${place.front.yMm}`) ?? 0,
  ]);
  return {
    ...{ seed, places: all.length, least: Math.min(...all), middle: median(all) },
    chosen: costs.get(`${chosen.xMm} ${chosen.yMm}`) ?? Number.NaN,
    rank: rankCorrelation(
      compared.map(([a]) => a!),
      compared.map(([, b]) => b!),
    ),
  };
}

/** A rip as the picture of the re-joined panel shows it: the joint, and the boards' own lines. */
interface RejoinedRip {
  readonly joint: LineMeasures;
  readonly own: readonly LineMeasures[];
}

/** Takes the strip out of the photo, joins what is left and reads the joint as a score does. */
function rejoined(
  photo: PanelPhoto,
  { etaAMm, etaBMm }: FrontSegment,
  loss: CutLoss,
  reach: SeamReach,
) {
  const spec = reglueRips(photo, [(etaAMm + etaBMm) / 2], loss);
  const image = reglue(photo.image, photo.pxPerMm, spec);
  const planes = panelPlanes({ ...photo, image, heightMm: spec.heightMm });
  const yMm = Math.round(etaAMm * photo.pxPerMm) / photo.pxPerMm;
  const frame = seamFrame({ x1Mm: 0, y1Mm: yMm, x2Mm: photo.widthMm, y2Mm: yMm });
  const wood = seamWood(planes, frame, yMm, spec.heightMm - yMm);
  const windowMm = (distanceMm * Math.PI) / 180;
  const { a, b } = ownDistancesMm(reach);
  return {
    joint: lineMeasures(wood, 0, windowMm),
    own: [...a.map((mm) => -mm), ...b].map((eta) => asFigure(lineMeasures(wood, eta, windowMm))),
  };
}

/** V of a part of it; a reveal's own dark line is meant to be there. */
function pictured({ joint, own }: RejoinedRip, { fromMm, toMm, glued }: FrontSegment): number {
  const part = (line: LineMeasures) => ({
    ...line,
    windows: line.windows
      .filter(({ atMm }) => atMm >= fromMm && atMm <= toMm)
      .map((window) => (glued ? window : { ...window, ridge: { areaMm: 0, peak: 0 } })),
  });
  const beside = own.map(part).filter(({ windows }) => windows.length > 0);
  return seamVisibility(part(joint), beside, distanceMm).v ?? 0;
}
