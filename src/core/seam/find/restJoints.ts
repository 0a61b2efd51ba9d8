import type { FoundSeam } from './foundSeam.js';
import { lineNear } from './lineNear.js';
import { cellsOf, type Rectangle } from './rectangle.js';
import type { SeamMaps } from './seamMaps.js';

/** The strongest line near what open gaps leave of their line. */
export interface RestJoint {
  readonly p: number;
  readonly x1Mm: number;
  readonly x2Mm: number;
  /** Off the gap's own line, mm. */
  readonly shiftMm: number;
}

/** Asks whether a joint runs along a gap's line through a part of its rectangle; null: cannot tell. */
export function restJoint(
  maps: SeamMaps,
  rect: Rectangle,
  yAt: (xMm: number) => number,
): RestJoint | null {
  const region = cellsOf(maps, rect, 'rip');
  const middleMm = ((region.col0 + region.col1) / 2) * maps.columnMm;
  const slope = (yAt(1) - yAt(0)) * maps.columnMm * maps.rowsPerMm;
  const near = lineNear(maps, region, yAt(middleMm) * maps.rowsPerMm - 0.5, slope);
  if (!near) return null;
  const shiftMm = (near.row + 0.5) / maps.rowsPerMm - yAt(middleMm);
  return { p: near.p, x1Mm: rect.x0, x2Mm: rect.x1, shiftMm };
}

/**
 * The joints on the rests of a gap's line. Where one of them shows, the saw went from edge to edge:
 * the others are joints too, on the line of those that show.
 *
 * @param least a rest shows when its p is not above this.
 */
export function jointsOfRests(
  rests: readonly (RestJoint | null)[],
  yAt: (xMm: number) => number,
  least: number,
): Omit<FoundSeam, 'kind'>[] {
  const told = rests.filter((joint) => joint !== null);
  const shown = told.filter(({ p }) => p <= least);
  if (shown.length === 0) return [];
  const meanShiftMm = shown.reduce((sum, { shiftMm }) => sum + shiftMm, 0) / shown.length;
  return told.map(({ p, x1Mm, x2Mm, shiftMm }) => {
    const implied = p > least;
    const shift = implied ? meanShiftMm : shiftMm;
    const line = { x1Mm, y1Mm: yAt(x1Mm) + shift, x2Mm, y2Mm: yAt(x2Mm) + shift };
    return { p, line, ...(implied && { implied }) };
  });
}
