/** Corners of a polygon that follows an ellipse, millimetres. */
export function ellipseOutline(
  xMm: number,
  yMm: number,
  radiusXMm: number,
  radiusYMm: number,
  corners = 32,
): readonly (readonly [xMm: number, yMm: number])[] {
  return Array.from({ length: corners }, (_, index) => {
    const angle = (2 * Math.PI * index) / corners;
    return [xMm + radiusXMm * Math.cos(angle), yMm + radiusYMm * Math.sin(angle)] as const;
  });
}
