import type { Box } from './box.js';
import { boxesOverlap } from './boxesOverlap.js';
import { boxInside } from './boxInside.js';

/**
 * The first of the wished-for places that lies within the bounds and touches nothing else.
 * @returns null when all are taken: the label is then left out rather than printed over another
 */
export function firstFreeBox(
  wishes: readonly Box[],
  taken: readonly Box[],
  bounds: Box,
  clearPx = 2,
): Box | null {
  const free = wishes.find(
    (box) => boxInside(box, bounds) && taken.every((other) => !boxesOverlap(box, other, clearPx)),
  );
  return free ?? null;
}
