import { wrapToSpacing } from './wrapToSpacing.js';

/**
 * The slide of side A along the joint that makes the lines meet again.
 *
 * u* = k cot(theta); on even lines every further s / sin(theta) is as good, and with a spacing
 * given the shortest of them is returned.
 *
 * @param joint lostMm k, mm; angleRad theta against the joint; spacingMm s, mm, optional.
 * @returns slide in mm, + for side A (above, left) in +x (crosscut: +y); null when the lines run
 *   along the joint and no slide changes anything.
 */
export function bestSlideMm({
  lostMm,
  angleRad,
  spacingMm,
}: {
  readonly lostMm: number;
  readonly angleRad: number;
  readonly spacingMm?: number;
}): number | null {
  const sin = Math.sin(angleRad);
  if (Math.abs(sin) < 1e-9) return null;
  const slide = (lostMm * Math.cos(angleRad)) / sin;
  return spacingMm === undefined ? slide : wrapToSpacing(slide, spacingMm / Math.abs(sin));
}
