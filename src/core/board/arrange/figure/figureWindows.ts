import { halfTurnRad } from '../../../geometry/halfTurnRad.js';
import type { EdgeFigure } from './edgeFigure.js';

/** How two edges agree over one short stretch of the joint they would make. */
export interface FigureWindow {
  /** Change of direction across the joint, half of the bend on either side allowed for. */
  readonly turnRad: number;
  /** How strongly the direction bends beside the joint: no turn is surprising there. */
  readonly bendRad: number;
  /** Difference of L*, the mean difference of the two boards taken off. */
  readonly tone: number;
  /** Correlation of the grain lines carried across the lost width; null where none cross. */
  readonly lines: number | null;
  /** Mean slant of the grain against the joint, and the steeper side's, unsigned. */
  readonly slantRad: number;
  readonly steepRad: number;
  /** The lines come from either side to a point: the middle of a cathedral. */
  readonly isAxis: boolean;
}

const windowMm = 8;
/** Stretch over which grain lines are compared, mm to either side of the window's middle. */
const linesReachMm = 20;
const edgeMm = 4;
const axisRad = 0.07;

/**
 * Compares two edges stretch by stretch.
 *
 * The lines of both sides are compared in the middle of the lost strip (`carriedLines`).
 *
 * @param slideMm how far A lies in +x against B, from both left ends in line.
 */
export function figureWindows(a: EdgeFigure, b: EdgeFigure, slideMm = 0): FigureWindow[] {
  const by = Math.round(slideMm);
  const from = Math.max(0, by) + edgeMm;
  const to = Math.min(b.angleRad.length, a.angleRad.length + by) - edgeMm;
  if (to - from < windowMm) return [];
  const tones = b.lightness.map((v, i) => (a.lightness[i - by] ?? Number.NaN) - v);
  const usual = mean(tones, from, to);
  const windows: FigureWindow[] = [];
  for (let i = from; i + windowMm <= to; i += windowMm) {
    const end = i + windowMm;
    const angleA = mean(a.angleRad, i - by, end - by);
    const angleB = mean(b.angleRad, i, end);
    const bendA = mean(a.bendRad, i - by, end - by);
    const bendB = mean(b.bendRad, i, end);
    windows.push({
      turnRad: halfTurnRad(angleA - angleB) + 0.5 * (bendA - bendB),
      bendRad: Math.abs(bendA) + Math.abs(bendB),
      tone: mean(tones, i, end) - usual,
      lines: linesLikeness(a, b, by, i + windowMm / 2),
      slantRad: Math.abs(halfTurnRad(angleB + halfTurnRad(angleA - angleB) / 2)),
      steepRad: Math.max(Math.abs(angleA), Math.abs(angleB)),
      isAxis: angleA * angleB < 0 && Math.abs(angleA - angleB) > axisRad,
    });
  }
  return windows;
}

/** Best correlation over the widths tried; null when too little can be followed. */
function linesLikeness(a: EdgeFigure, b: EdgeFigure, by: number, middle: number): number | null {
  let best: number | null = null;
  a.carried.forEach((carried, k) => {
    const r = correlation(carried, b.carried[k], by, middle);
    if (r !== null && (best === null || r > best)) best = r;
  });
  return best;
}

function correlation(a: Float64Array, b: Float64Array, by: number, middle: number): number | null {
  let ab = 0;
  let aa = 0;
  let bb = 0;
  let told = 0;
  const from = Math.max(0, by, middle - linesReachMm);
  const to = Math.min(b.length, a.length + by, middle + linesReachMm);
  for (let i = from; i < to; i++) {
    const va = a[i - by];
    const vb = b[i];
    const product = va * vb;
    if (Number.isNaN(product)) continue;
    ab += product;
    aa += va * va;
    bb += vb * vb;
    told++;
  }
  return told > 1.2 * linesReachMm && aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : null;
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum / (to - from);
}
