import type { Box } from './box.js';

/** Whether two boxes share any area, or come nearer than `clearPx` (default 0). */
export function boxesOverlap(a: Box, b: Box, clearPx = 0): boolean {
  return (
    a.x < b.x + b.width + clearPx &&
    b.x < a.x + a.width + clearPx &&
    a.y < b.y + b.height + clearPx &&
    b.y < a.y + a.height + clearPx
  );
}
