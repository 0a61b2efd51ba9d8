/**
 * Whether (x, y) lies inside a polygon given by its corners in order (even-odd rule; the closing
 * side is implied).
 */
export function pointInPolygon(
  x: number,
  y: number,
  corners: readonly (readonly [number, number])[],
): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [xi, yi] = corners[i];
    const [xj, yj] = corners[j];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}
