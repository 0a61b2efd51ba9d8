import type { LineMm } from '../../results/scoreResult.js';
import type { CellRegion } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';

/** A rectangle of the panel, mm. */
export interface Rectangle {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Half of the widest joint that is left out of the parts beside it, mm. */
const clearMm = 1.5;

/** The two rectangles beside a line; a tilted line leaves out the sliver it leans over. */
export function partsBeside(
  rect: Rectangle,
  kind: 'rip' | 'crosscut',
  line: LineMm,
  clear = clearMm,
): Rectangle[] {
  if (kind === 'rip') {
    const [low, high] = [Math.min(line.y1Mm, line.y2Mm), Math.max(line.y1Mm, line.y2Mm)];
    return [
      { ...rect, y1: low - clear },
      { ...rect, y0: high + clear },
    ];
  }
  const [low, high] = [Math.min(line.x1Mm, line.x2Mm), Math.max(line.x1Mm, line.x2Mm)];
  return [
    { ...rect, x1: low - clear },
    { ...rect, x0: high + clear },
  ];
}

/** The cells of a rectangle in maps for seams along x (crosscuts: the transposed panel's). */
export function cellsOf(maps: SeamMaps, rect: Rectangle, kind: 'rip' | 'crosscut'): CellRegion {
  const [x0, x1, y0, y1] =
    kind === 'rip' ? [rect.x0, rect.x1, rect.y0, rect.y1] : [rect.y0, rect.y1, rect.x0, rect.x1];
  return {
    col0: Math.max(0, Math.ceil(x0 / maps.columnMm - 1e-6)),
    col1: Math.min(maps.columns, Math.floor(x1 / maps.columnMm + 1e-6)),
    row0: Math.max(0, Math.round(y0 * maps.rowsPerMm)),
    row1: Math.min(maps.rows, Math.round(y1 * maps.rowsPerMm)),
  };
}
