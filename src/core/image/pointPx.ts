/**
 * A place in a photo, in pixels measured from its top left corner: pixel (i, j) covers
 * i .. i + 1 and j .. j + 1, so the whole frame runs from (0, 0) to (width, height).
 */
export interface PointPx {
  readonly x: number;
  readonly y: number;
}
