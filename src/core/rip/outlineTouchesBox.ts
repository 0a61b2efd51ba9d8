import { pointInPolygon } from '../geometry/pointInPolygon.js';
import type { Outline } from './forecastLines.js';
import type { PanelBox } from './panelBox.js';

/**
 * Whether a region of the panel and a rectangle have any place in common: a corner of one inside
 * the other, or a side of the region that runs through the rectangle.
 *
 * @param outline corners in order, mm; the closing side is implied.
 */
export function outlineTouchesBox(outline: Outline, box: PanelBox): boolean {
  return (
    outline.some((corner, i) => sideCrosses(corner, outline[(i + 1) % outline.length], box)) ||
    pointInPolygon(box.x1Mm, box.y1Mm, outline)
  );
}

type Corner = Outline[number];

/** Whether any of the side from one corner to the next lies in the rectangle (Liang and Barsky). */
function sideCrosses([ax, ay]: Corner, [bx, by]: Corner, box: PanelBox): boolean {
  let [from, to] = [0, 1];
  const within = (start: number, way: number, least: number, most: number) => {
    if (way === 0) return start >= least && start <= most;
    const [one, other] = [(least - start) / way, (most - start) / way];
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
    return from <= to;
  };
  return within(ax, bx - ax, box.x1Mm, box.x2Mm) && within(ay, by - ay, box.y1Mm, box.y2Mm);
}
