import { asFigure } from './asFigure.js';
import { type LineMeasures, lineMeasures, type WindowMeasures } from './lineMeasures.js';
import type { SeamReach } from './seamReach.js';
import type { SeamWood } from './seamWood.js';

/** Distances from the seam at which the board's own figure is read, mm. */
const distancesMm: readonly number[] = [10, 14, 18, 22, 26];
/** A line needs this much wood beyond it to read its far side. */
const beyondMm = 5;

/**
 * Reads lines beside a seam that carry no joint: what the same two boards do by themselves. The
 * seam is judged against them.
 *
 * @param keep which windows of which line count (not those beside another joint or a marked
 *   knot); a line that keeps fewer than half of its windows is left out.
 * @returns none when the boards are too narrow (less than 15 mm on each side).
 */
export function ownLines(
  wood: SeamWood,
  reach: SeamReach,
  windowMm: number,
  keep: (atMm: number, etaMm: number) => boolean,
): LineMeasures[] {
  const { a, b } = ownDistancesMm(reach);
  return [...a.map((d) => -d), ...b]
    .map((eta) => keptWindows(asFigure(lineMeasures(wood, eta, windowMm)), keep))
    .filter((line): line is LineMeasures => line !== null);
}

/** How far from the joint the board's own lines are read on either side, mm. */
export function ownDistancesMm(reach: SeamReach): { readonly a: number[]; readonly b: number[] } {
  const within = (mm: number) => distancesMm.filter((d) => d + beyondMm <= mm);
  return { a: within(reach.aMm), b: within(reach.bMm) };
}

/** The line with only the windows that count; null when too few are left. */
export function keptWindows(
  line: LineMeasures,
  keep: (atMm: number, etaMm: number) => boolean,
): LineMeasures | null {
  const windows: readonly WindowMeasures[] = line.windows.filter((w) => keep(w.atMm, line.etaMm));
  return 2 * windows.length < line.windows.length ? null : { ...line, windows };
}
