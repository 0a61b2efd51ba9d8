import type { GrainCell, GrainResult } from '../../core/results/grainResult.js';
import type { Box } from '../draw/box.js';
import { boxesOverlap } from '../draw/boxesOverlap.js';
import { boxInside } from '../draw/boxInside.js';
import { px } from '../draw/px.js';
import type { ScoreFrame } from './scoreFrame.js';

/**
 * Grain direction as pencil strokes on the wood: few, short, longer where the angle is surer.
 * Length = 0.68 spacing x (1 - se / 8 deg); a place without an angle, or with a standard error
 * above 6 deg, stays bare.
 * @param taken bands and labels, which strokes keep off
 */
export function grainStrokes(
  { cells }: GrainResult,
  { panel, scale, widthPx }: ScoreFrame,
  taken: readonly Box[],
): string {
  const spacingPx = widthPx < 560 ? 26 : 38;
  const longestPx = 0.68 * spacingPx;
  const strokes = thinned(cells, spacingPx / scale).flatMap((cell) => {
    if (cell.angleDeg === null || cell.angleSeDeg === null || cell.angleSeDeg > 6) return [];
    const half = (longestPx * (1 - cell.angleSeDeg / 8)) / 2;
    const angleRad = (cell.angleDeg * Math.PI) / 180;
    const [dx, dy] = [half * Math.cos(angleRad), half * Math.sin(angleRad)];
    const [x, y] = [panel.x + cell.xMm * scale, panel.y + cell.yMm * scale];
    const [width, height] = [2 * Math.abs(dx), 2 * Math.abs(dy)];
    const box = { x: x - width / 2, y: y - height / 2, width, height };
    if (!boxInside(box, panel)) return [];
    if (taken.some((other) => boxesOverlap(box, other, 3))) return [];
    return [`M${px(x - dx)} ${px(y - dy)}L${px(x + dx)} ${px(y + dy)}`];
  });
  if (strokes.length === 0) return '';
  const d = strokes.join('');
  return `<g fill="none" stroke-linecap="round"><path d="${d}" stroke="#ffffff" stroke-opacity="0.5" stroke-width="2.6"/><path d="${d}" stroke="#26262a" stroke-opacity="0.8" stroke-width="1.1"/></g>`;
}

/** One cell near each point of a staggered lattice, so that the strokes stand like bricks. */
function thinned(cells: readonly GrainCell[], spacingMm: number): GrainCell[] {
  const nearest = new Map<string, { cell: GrainCell; distance: number }>();
  for (const cell of cells) {
    const row = Math.floor(cell.yMm / spacingMm);
    const shift = (row % 2) * 0.5;
    const column = Math.floor(cell.xMm / spacingMm - shift);
    const distance = Math.hypot(
      cell.xMm - (column + shift + 0.5) * spacingMm,
      cell.yMm - (row + 0.5) * spacingMm,
    );
    const key = `${column},${row}`;
    if (distance < (nearest.get(key)?.distance ?? Infinity)) nearest.set(key, { cell, distance });
  }
  return [...nearest.values()].map(({ cell }) => cell);
}
