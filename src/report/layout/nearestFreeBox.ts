import type { Box } from '../draw/box.js';
import { boxesOverlap } from '../draw/boxesOverlap.js';
import { boxInside } from '../draw/boxInside.js';

/**
 * The free place for a label nearest to where it belongs.
 * @param centre where it belongs, px
 * @param size of the label, px
 * @param taken boxes that must not be touched
 * @param bounds box that must not be left
 * @param clearPx air to the next box, default 3
 * @returns null when the whole area is taken
 */
export function nearestFreeBox(
  centre: readonly [x: number, y: number],
  size: { readonly width: number; readonly height: number },
  taken: readonly Box[],
  bounds: Box,
  clearPx = 3,
): Box | null {
  const stepPx = 4;
  const reach = Math.ceil(Math.max(bounds.width, bounds.height) / stepPx);
  let best: { box: Box; distance: number } | null = null;
  for (let ring = 0; ring <= reach; ring++) {
    // A farther ring cannot beat a box that is nearer than the ring itself.
    if (best && best.distance < ring * stepPx) return best.box;
    for (const [dx, dy] of ringSteps(ring)) {
      const box: Box = {
        x: centre[0] + dx * stepPx - size.width / 2,
        y: centre[1] + dy * stepPx - size.height / 2,
        ...size,
      };
      const distance = stepPx * Math.hypot(dx, dy);
      if (best && distance >= best.distance) continue;
      if (boxInside(box, bounds) && taken.every((other) => !boxesOverlap(box, other, clearPx))) {
        best = { box, distance };
      }
    }
  }
  return best?.box ?? null;
}

function ringSteps(ring: number): (readonly [number, number])[] {
  if (ring === 0) return [[0, 0]];
  const steps: (readonly [number, number])[] = [];
  for (let i = -ring; i <= ring; i++) steps.push([i, -ring], [i, ring]);
  for (let i = -ring + 1; i < ring; i++) steps.push([-ring, i], [ring, i]);
  return steps;
}
