import type { Placement } from './panelSpec.js';

/**
 * The placement that shows face point (u, v) at panel point (x, y): straight, or turned half
 * round in its own plane (end for end) so that u = uMm - (x - xMm), v = vMm - (y - yMm).
 */
export function placeOnFace(
  xMm: number,
  yMm: number,
  uMm: number,
  vMm: number,
  turned = false,
): Placement {
  const way = turned ? -1 : 1;
  return { a: way, b: 0, c: uMm - way * xMm, d: 0, e: way, f: vMm - way * yMm };
}
