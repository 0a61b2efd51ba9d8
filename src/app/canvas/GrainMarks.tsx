import { memo } from 'react';
import type { GrainCell } from '../../core/results/grainResult.js';
import type { ViewTransform } from '../geometry/viewTransform.js';

const fewest = 26;

/** Few, short pencil strokes along the grain, longer where the direction is surer. */
export const GrainMarks = memo(function GrainMarks({
  cells,
  view,
}: {
  readonly cells: readonly GrainCell[];
  readonly view: ViewTransform;
}) {
  const sure = cells.filter(({ angleDeg, coherence }) => angleDeg !== null && coherence > 0.15);
  const pitch = pitchOf(cells) * view.pxPerMm;
  // On a small screen every second or third cell is enough.
  const every = Math.max(1, Math.round(fewest / Math.max(1, pitch)));
  const chosen = sure.filter((cell) => onGrid(cell, pitchOf(cells), every));
  const d = chosen
    .map(({ xMm, yMm, angleDeg, coherence }) => {
      const angle = ((angleDeg ?? 0) * Math.PI) / 180;
      const half = 0.42 * pitch * every * Math.min(1, 0.25 + coherence);
      const x = xMm * view.pxPerMm + view.x;
      const y = yMm * view.pxPerMm + view.y;
      const dx = half * Math.cos(angle);
      const dy = half * Math.sin(angle);
      return `M${(x - dx).toFixed(1)} ${(y - dy).toFixed(1)}L${(x + dx).toFixed(1)} ${(y + dy).toFixed(1)}`;
    })
    .join('');
  return (
    <g fill="none" strokeLinecap="round">
      <path d={d} stroke="#fff" strokeWidth={2.6} opacity={0.35} />
      <path d={d} stroke="#222" strokeWidth={1.3} opacity={0.75} />
    </g>
  );
});

function pitchOf(cells: readonly GrainCell[]): number {
  const first = cells[0];
  const next = cells.find((cell) => first && cell.yMm === first.yMm && cell.xMm > first.xMm);
  return first && next ? next.xMm - first.xMm : 10;
}

function onGrid({ xMm, yMm }: GrainCell, pitchMm: number, every: number): boolean {
  const column = Math.floor(xMm / pitchMm);
  const row = Math.floor(yMm / pitchMm);
  return column % every === Math.floor(every / 2) && row % every === Math.floor(every / 2);
}
