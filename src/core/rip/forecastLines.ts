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
  /** The same panel, its rips read joint by joint as a score reads them: for the few that count. */
  readonly asScored: ForecastLines;
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
  let columns: CutLines | null = null;
  const crosscut = () => {
    columns ??= cutLines(read('crosscut').rows, distanceMm, (at, eta) => free(eta, at));
    return columns;
  };
  const linesOf = (rows: PanelRows, asScored: () => ForecastLines): ForecastLines => ({
    ...{ widthMm, heightMm, distanceMm, leftOut, rip: onRip(rows) },
    get crosscut() {
      return crosscut();
    },
    get asScored() {
      return asScored();
    },
  });
  const scored: ForecastLines = linesOf(scoredRows(rip.wood, windowMm, rip.rows), () => scored);
  return linesOf(rip.rows, () => scored);
}

/** How far the pieces go on either side of two edges of a panel `acrossMm` wide, mm. */
export function reachOfCut(etaAMm: number, etaBMm: number, acrossMm: number): SeamReach {
  return { aMm: etaAMm, bMm: acrossMm - etaBMm };
}
