import type { Plane } from '../../image/plane.js';
import { meanOf } from '../../statistics/meanOf.js';

/** An open gap (the reveal about a front, a joint that stands open) along x, mm. */
export interface OpenGap {
  readonly x1Mm: number;
  readonly y1Mm: number;
  readonly x2Mm: number;
  readonly y2Mm: number;
}

/** Darker than the panel's mean by this in log luminance (a factor of 2.5) over a whole cell is no wood. */
const darkContrast = 0.9;
const cellMm = 3;
const widestMm = 6;
const shortestMm = 24;
/** From one cell to the next a gap's middle moves by no more than this, mm. */
const wanderMm = 0.5;
const darkShare = 0.9;
/** A saw's gap runs along the panel's edge give or take this (3 deg), straight to this, rms. */
const steepest = 0.0524;
const crookedMm = 0.25;

interface Chain {
  readonly cells: { readonly column: number; readonly row: number }[];
}

/**
 * Finds the open gaps of a panel along x: straight chains of cells that are dark from end to end,
 * no wider than 6 mm and at least 24 mm long. No wood is that dark for that long in a straight
 * line: such a gap needs no chance of error.
 *
 * @param logLuminance natural log of linear luminance (transposed for gaps along y).
 */
export function openGaps(logLuminance: Plane, pxPerMm: number): OpenGap[] {
  const { width, height, data } = logLuminance;
  const limit = meanOf(data) - darkContrast;
  const cellPx = Math.max(2, Math.round(cellMm * pxPerMm));
  const columns = Math.floor(width / cellPx);
  const done: Chain[] = [];
  let open: Chain[] = [];
  for (let column = 0; column < columns; column++) {
    const next: Chain[] = [];
    for (const row of darkRows(column)) {
      const near = open.find(
        ({ cells }) => Math.abs(cells[cells.length - 1].row - row) <= wanderMm * pxPerMm + 0.5,
      );
      if (near) open = open.filter((chain) => chain !== near);
      const chain = near ?? { cells: [] };
      chain.cells.push({ column, row });
      next.push(chain);
    }
    done.push(...open);
    open = next;
  }
  return [...done, ...open]
    .filter(({ cells }) => cells.length * cellPx >= shortestMm * pxPerMm)
    .map(lineThrough)
    .filter((gap): gap is OpenGap => gap !== null);

  /** Middles of the runs of rows that are dark across a cell and no wider than a gap. */
  function darkRows(column: number): number[] {
    const middles: number[] = [];
    let start = -1;
    for (let y = 0; y <= height; y++) {
      const dark = y < height && darkAt(column, y);
      if (dark && start < 0) start = y;
      if (dark || start < 0) continue;
      const inside = start > 0 && y < height;
      if (inside && y - start <= widestMm * pxPerMm) middles.push((start + y - 1) / 2);
      start = -1;
    }
    return middles;
  }

  function darkAt(column: number, y: number): boolean {
    let dark = 0;
    for (let i = y * width + column * cellPx, end = i + cellPx; i < end; i++) {
      if (data[i] < limit) dark++;
    }
    return dark >= darkShare * cellPx;
  }

  /**
   * Least squares through the cells' middles, from the first cell's start to the last one's end; null
   * when it is not straight or not along the edge.
   */
  function lineThrough({ cells }: Chain): OpenGap | null {
    const n = cells.length;
    const x = (k: number) => (cells[k].column + 0.5) * cellPx;
    const mx = cells.reduce((sum, _, k) => sum + x(k), 0) / n;
    const my = cells.reduce((sum, cell) => sum + cell.row, 0) / n;
    const xx = cells.reduce((sum, _, k) => sum + (x(k) - mx) ** 2, 0);
    const xy = cells.reduce((sum, cell, k) => sum + (x(k) - mx) * (cell.row - my), 0);
    if (Math.abs(xy / xx) > steepest) return null;
    const off = cells.reduce(
      (sum, cell, k) => sum + (cell.row - my - (xy / xx) * (x(k) - mx)) ** 2,
      0,
    );
    if (Math.sqrt(off / n) > crookedMm * pxPerMm) return null;
    const [x1, x2] = [x(0) - cellPx / 2, x(n - 1) + cellPx / 2];
    const y = (at: number) => (my + (xy / xx) * (at - mx) + 0.5) / pxPerMm;
    return { x1Mm: x1 / pxPerMm, y1Mm: y(x1), x2Mm: x2 / pxPerMm, y2Mm: y(x2) };
  }
}
