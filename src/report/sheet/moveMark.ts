import type { Mark } from './mark.js';

/** The same mark `dx` further right and `dy` further down, px. */
export function moveMark(mark: Mark, dx: number, dy: number): Mark {
  switch (mark.kind) {
    case 'line':
      return { ...mark, x1: mark.x1 + dx, x2: mark.x2 + dx, y1: mark.y1 + dy, y2: mark.y2 + dy };
    case 'polygon':
      return { ...mark, points: mark.points.map(([x, y]) => [x + dx, y + dy] as const) };
    default:
      return { ...mark, x: mark.x + dx, y: mark.y + dy };
  }
}
