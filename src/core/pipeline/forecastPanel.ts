import { standingGrainNotes } from '../grain/standingGrainNotes.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { Progress } from '../progress.js';
import type { ForecastResult } from '../results/forecastResult.js';
import { confirmCurve } from '../rip/confirmCurve.js';
import { curveSummary } from '../rip/curveSummary.js';
import { disagreements } from '../rip/disagreements.js';
import { forecastDepth, type PlanedEdge } from '../rip/forecastDepth.js';
import { type ForecastLines, forecastLines } from '../rip/forecastLines.js';
import { forecastRip, type RipForecast } from '../rip/forecastRip.js';
import { ripLossMm } from '../rip/frontCut.js';
import { placementBox } from '../rip/placementBox.js';
import { type RipCost, ripCurve } from '../rip/ripCurve.js';
import { panelPlanes } from '../seam/panelPlanes.js';
import type { PanelPlanes } from '../seam/seamWood.js';
import { checkForecast } from './checkForecast.js';
import { forecastFaceRings } from './forecastFaceRings.js';
import { type FrontForecast, forecastFront, frontWish } from './forecastFront.js';
import { forecastImagined } from './forecastImagined.js';
import type { ForecastOptions } from './forecastOptions.js';
import { forecastUntold } from './forecastUntold.js';
import { photoNotes, showsGrain } from './photoNotes.js';
import { defaultScoreOptions } from './scoreOptions.js';

/**
 * Forecasts what cuts through an uncut panel would show: every rip over the whole width, the rips
 * asked for with their best slides, and where a front of given size is best taken from.
 *
 * @param photo the uncut panel, square on. @param options see `ForecastOptions`.
 * @throws SeamgrainError `badPanel` for a rip off the panel, `cannotDo` for a front that does not
 *   fit.
 */
export function forecastPanel(
  photo: PanelPhoto,
  options: ForecastOptions,
  progress?: Progress,
): ForecastResult {
  checkForecast(photo, options);
  const wish = frontWish(photo, options);
  if (wish) placementBox(photo, wish);
  const { distanceMm, kerfMm, dressMm, spareMm, revealMm } = options;
  const lossMm = ripLossMm(options);
  progress?.(0.02, 'reading the panel');
  const planes = panelPlanes(photo);
  const notes = [...photo.notes, ...photoNotes(planes, 1, defaultScoreOptions)];
  notes.push(...standingGrainNotes(planes.lab.lightness, 'rips'));
  if (!showsGrain(planes)) return forecastUntold(photo, options, notes);
  const panelLines = forecastLines(planes, photo, distanceMm, options.leftOut);
  const lines = options.thorough ? panelLines.asScored : panelLines;
  const quick = ripCurve(lines, lossMm, part(progress, 0.1, 0.25));
  progress?.(0.35, 'looking again at the best');
  const { curve, best } = confirmCurve(lines, quick, lossMm, options.ripsMm);
  const asked = options.ripsMm.length > 0 || options.front || !best ? options.ripsMm : [best.yMm];
  const rips = ripsOf(lines.asScored, asked, lossMm, spareMm, part(progress, 0.4, 0.1));
  const front = forecastFront(lines, options, part(progress, 0.5, 0.4));
  const imagined = options.imagine.map((wood, i) => {
    progress?.(0.9 + (0.1 * i) / options.imagine.length, 'drawing other wood');
    return forecastImagined(wood, photo, options);
  });
  progress?.(1, 'done');
  return {
    schema: 'seamgrain/forecast@1',
    panel: { widthMm: photo.widthMm, heightMm: photo.heightMm, pxPerMm: photo.pxPerMm },
    ...{ kerfMm, dressMm, lossMm, distanceMm, spareMm, revealMm },
    curve,
    summary: { ...curveSummary(curve), vBest: best?.v ?? null, bestYMm: best?.yMm ?? null },
    disagreements: disagreements(curve),
    rips: options.ripsMm.length > 0 ? rips.map(({ rip }) => rip) : [],
    placements: front?.placements ?? [],
    search: front?.search ?? null,
    reglued: front?.reglued ?? regluedRips(photo, rips, lossMm),
    depth: depthOf(planes, lines, options, front, asked, lossMm),
    imagined,
    leftOut: options.leftOut,
    notes: [...notes, ...notesOf(curve), ...notesOfSearch(front)],
  };
}

function ripsOf(
  lines: ForecastLines,
  ripsMm: readonly number[],
  lossMm: number,
  spareMm: number,
  progress?: Progress,
): RipForecast[] {
  const sorted = [...ripsMm].sort((a, b) => a - b);
  return ripsMm.map((yMm, i) => {
    progress?.(i / ripsMm.length, `rip ${i + 1} of ${ripsMm.length}`);
    return forecastRip(
      lines,
      yMm,
      lossMm,
      spareMm,
      yMm - lossMm / 2 - lossMm * sorted.indexOf(yMm),
    );
  });
}

function regluedRips(photo: PanelPhoto, rips: readonly RipForecast[], lossMm: number) {
  if (rips.length === 0) return null;
  const heightMm = photo.heightMm - lossMm * rips.length;
  return { widthMm: photo.widthMm, heightMm, seams: rips.map(({ seam }) => seam) };
}

function depthOf(
  planes: PanelPlanes,
  lines: ForecastLines,
  options: ForecastOptions,
  front: FrontForecast | null,
  ripsMm: readonly number[],
  lossMm: number,
) {
  const half = lossMm / 2;
  const edges: readonly PlanedEdge[] =
    front?.edges ??
    ripsMm.map((y) => ({
      ...{ etaAMm: y - half, etaBMm: y + half, fromMm: 0, toMm: lines.widthMm },
    }));
  if (edges.length === 0 || options.withDepth === false) return null;
  const isGiven = options.ringAngleDeg !== null || options.ringWidthMm !== null;
  const rings = isGiven ? options : { ...options, face: forecastFaceRings(planes) };
  return forecastDepth(lines.asScored, edges, rings);
}

function notesOf(curve: readonly RipCost[]): string[] {
  if (curve.some(({ v }) => v !== null)) return [];
  return ['No rip can be forecast: the panel is too small, or no grain shows in the photo.'];
}

function notesOfSearch(front: FrontForecast | null): string[] {
  if (front?.search?.clear !== 0) return [];
  return [
    'No place of the front keeps clear of the areas that you left out: every one has such an area in the front’s face or in the way of a cut.',
  ];
}

const part =
  (progress: Progress | undefined, from: number, share: number): Progress =>
  (fraction, what) =>
    progress?.(from + share * fraction, what);
