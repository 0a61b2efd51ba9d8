import { pointInPolygon } from '../geometry/pointInPolygon.js';
import { seamFrame } from '../seam/seamFrame.js';
import type { SeamReach } from '../seam/seamReach.js';
import { type PanelPlanes, seamWood } from '../seam/seamWood.js';
import { type CutLines, cutLines } from './cutLines.js';

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
  const everything = Number.POSITIVE_INFINITY;
  const read = (kind: 'rip' | 'crosscut') => {
    const [x2Mm, y2Mm, farMm] = kind === 'rip' ? [widthMm, 0, heightMm] : [0, heightMm, widthMm];
    const frame = seamFrame({ x1Mm: 0, y1Mm: 0, x2Mm, y2Mm });
    const wood = seamWood(planes, frame, 0, farMm, everything);
    return cutLines(wood, distanceMm, (at, eta) =>
      kind === 'rip' ? free(at, eta) : free(eta, at),
    );
  };
  let crosscut: CutLines | null = null;
  return {
    widthMm,
    heightMm,
    distanceMm,
    leftOut,
    rip: read('rip'),
    get crosscut() {
      crosscut ??= read('crosscut');
      return crosscut;
    },
  };
}

/** How far the pieces go on either side of two edges of a panel `acrossMm` wide, mm. */
export function reachOfCut(etaAMm: number, etaBMm: number, acrossMm: number): SeamReach {
  return { aMm: etaAMm, bMm: acrossMm - etaBMm };
}
