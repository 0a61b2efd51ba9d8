import { pointInPolygon } from '../geometry/pointInPolygon.js';
import { seamFrame } from '../seam/seamFrame.js';
import type { SeamReach } from '../seam/seamReach.js';
import { type PanelPlanes, seamWood } from '../seam/seamWood.js';
import { type CutLines, cutLines } from './cutLines.js';
import { type PanelRows, panelRows } from './panelRows.js';
import { scoredRows } from './scoredRows.js';

/** An uncut panel made ready for forecasting: every line of it can be read both ways. */
export interface ForecastLines {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly distanceMm: number;
  /** Regions that are not judged. */
  readonly leftOut: readonly Outline[];
  readonly rip: CutLines;
  /** Read when first asked for: most questions are about rips only. */
  readonly crosscut: CutLines;
  /** The same panel read joint by joint as a score reads it: for the few cuts that count. */
  readonly asScored: ForecastLines;
  /** Its rips so, its crosscuts still quickly: a row of places has two rips and many crosscuts. */
  readonly ripsAsScored: ForecastLines;
}

/** A region of the panel not to be counted: corners in panel millimetres. */
export type Outline = readonly (readonly [xMm: number, yMm: number])[];

/** @param leftOut regions whose windows do not count (a knot, glare). */
export function forecastLines(
  planes: PanelPlanes,
  panel: { readonly widthMm: number; readonly heightMm: number },
  distanceMm: number,
  leftOut: readonly Outline[] = [],
): ForecastLines {
  const { widthMm, heightMm } = panel;
  const free = (x: number, y: number) => leftOut.every((region) => !pointInPolygon(x, y, region));
  const windowMm = (distanceMm * Math.PI) / 180;
  const everything = Number.POSITIVE_INFINITY;
  const read = (kind: 'rip' | 'crosscut') => {
    const [x2Mm, y2Mm, farMm] = kind === 'rip' ? [widthMm, 0, heightMm] : [0, heightMm, widthMm];
    const frame = seamFrame({ x1Mm: 0, y1Mm: 0, x2Mm, y2Mm });
    const wood = seamWood(planes, frame, 0, farMm, everything);
    return { wood, rows: panelRows(wood, windowMm) };
  };
  const rip = read('rip');
  const onRip = (rows: PanelRows) => cutLines(rows, distanceMm, free);
  const onColumns = (rows: PanelRows) => cutLines(rows, distanceMm, (at, eta) => free(eta, at));
  const columns = once(() => read('crosscut'));
  const quickColumns = once(() => onColumns(columns().rows));
  const scoredColumns = once(() => onColumns(scoredRows(columns().wood, windowMm, columns().rows)));
  const linesOf = (
    rips: CutLines,
    crosscuts: () => CutLines,
    scored: () => Pick<ForecastLines, 'asScored' | 'ripsAsScored'>,
  ): ForecastLines => ({
    ...{ widthMm, heightMm, distanceMm, leftOut, rip: rips },
    get crosscut() {
      return crosscuts();
    },
    get asScored() {
      return scored().asScored;
    },
    get ripsAsScored() {
      return scored().ripsAsScored;
    },
  });
  const scoredRips = onRip(scoredRows(rip.wood, windowMm, rip.rows));
  const asScored: ForecastLines = linesOf(scoredRips, scoredColumns, () => ({
    asScored,
    ripsAsScored: asScored,
  }));
  const ripsAsScored: ForecastLines = linesOf(scoredRips, quickColumns, () => ({
    asScored,
    ripsAsScored,
  }));
  return linesOf(onRip(rip.rows), quickColumns, () => ({ asScored, ripsAsScored }));
}

/** How far the pieces go on either side of two edges of a panel `acrossMm` wide, mm. */
export function reachOfCut(etaAMm: number, etaBMm: number, acrossMm: number): SeamReach {
  return { aMm: etaAMm, bMm: acrossMm - etaBMm };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
