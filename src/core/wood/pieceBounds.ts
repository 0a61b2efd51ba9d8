/** Pixel box of a convex outline (panel mm) inside a canvas, with half a pixel to spare. */
export function pieceBounds(
  outline: readonly (readonly [number, number])[],
  pxPerMm: number,
  width: number,
  height: number,
) {
  const xs = outline.map(([x]) => x * pxPerMm);
  const ys = outline.map(([, y]) => y * pxPerMm);
  const left = Math.max(0, Math.floor(Math.min(...xs) - 1));
  const top = Math.max(0, Math.floor(Math.min(...ys) - 1));
  return {
    left,
    top,
    width: Math.max(0, Math.min(width, Math.ceil(Math.max(...xs) + 1)) - left),
    height: Math.max(0, Math.min(height, Math.ceil(Math.max(...ys) + 1)) - top),
  };
}
