import type { LayoutPiece, LayoutResult } from '../../core/results/layoutResult.js';

/** The strips whose pieces differ in length; equal ones share a row of dimensions. */
export function distinctStrips(layout: LayoutResult): LayoutPiece[][] {
  const strips = new Map<string, LayoutPiece[]>();
  for (const piece of layout.pieces) {
    if (piece.strip) strips.set(piece.strip, [...(strips.get(piece.strip) ?? []), piece]);
  }
  const seen = new Set<string>();
  return [...strips.values()].filter((pieces) => {
    const key = pieces.map(({ lengthMm }) => lengthMm).join();
    return !seen.has(key) && seen.add(key);
  });
}
