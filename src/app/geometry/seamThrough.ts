import type { LineMm } from '../../core/results/scoreResult.js';
import type { Extent } from './viewTransform.js';

/** A straight seam drawn by hand: along the panel or across it, through one point, edge to edge. */
export function seamThrough(
  panelMm: Extent,
  xMm: number,
  yMm: number,
  run: 'along' | 'across',
): LineMm {
  return run === 'along'
    ? { x1Mm: 0, y1Mm: yMm, x2Mm: panelMm.width, y2Mm: yMm }
    : { x1Mm: xMm, y1Mm: 0, x2Mm: xMm, y2Mm: panelMm.height };
}

/** Whether a line runs more along the panel (a rip) than across it. */
export function runsAlong(line: LineMm): boolean {
  return Math.abs(line.x2Mm - line.x1Mm) >= Math.abs(line.y2Mm - line.y1Mm);
}
