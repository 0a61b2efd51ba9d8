import { type ViewTransform, zoomAt } from './viewTransform.js';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The view after two fingers moved: what was under each finger stays under it. */
export function pinch(
  view: ViewTransform,
  before: readonly [Point, Point],
  after: readonly [Point, Point],
): ViewTransform {
  const middle = (pair: readonly [Point, Point]) => ({
    x: (pair[0].x + pair[1].x) / 2,
    y: (pair[0].y + pair[1].y) / 2,
  });
  const spread = (pair: readonly [Point, Point]) =>
    Math.max(1, Math.hypot(pair[0].x - pair[1].x, pair[0].y - pair[1].y));
  const from = middle(before);
  const to = middle(after);
  const zoomed = zoomAt(view, spread(after) / spread(before), from.x, from.y);
  return { ...zoomed, x: zoomed.x + to.x - from.x, y: zoomed.y + to.y - from.y };
}
