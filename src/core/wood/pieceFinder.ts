import type { PanelSpec } from './panelSpec.js';

/** Which piece covers a panel point: index of the first whose convex outline holds it, or -1. */
export function pieceFinder({
  widthMm,
  heightMm,
  pieces,
}: PanelSpec): (xMm: number, yMm: number) => number {
  // Per edge: start x, start y, direction x, direction y.
  const edges = pieces.map(({ outline }) =>
    Float64Array.from(
      outline.flatMap(([x0, y0], i) => {
        const [x1, y1] = outline[(i + 1) % outline.length]!;
        return [x0, y0, x1 - x0, y1 - y0];
      }),
    ),
  );
  return (x, y) => {
    if (x < 0 || y < 0 || x > widthMm || y > heightMm) return -1;
    for (let piece = 0; piece < edges.length; piece++) {
      const edge = edges[piece]!;
      let inside = true;
      for (let k = 0; inside && k < edge.length; k += 4) {
        inside = edge[k + 2]! * (y - edge[k + 1]!) - edge[k + 3]! * (x - edge[k]!) >= 0;
      }
      if (inside) return piece;
    }
    return -1;
  };
}
