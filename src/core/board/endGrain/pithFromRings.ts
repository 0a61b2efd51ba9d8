import type { FittedRings } from './fitRings.js';
import { pithOf } from './ringFamily.js';

/** Where the rings' centre lies, or how far away it is at least. */
export type PithFound =
  | { readonly kind: 'told'; readonly xMm: number; readonly yMm: number; readonly seMm: number }
  | { readonly kind: 'far'; readonly atLeastMm: number };

/**
 * A distance is told as a figure when its error is at most a quarter of it. On drawn ends whose
 * true pith lies 1 to 4 board widths away, the waving of the rings alone leaves 10 to 40 %
 * (docs/endgrain.md), and a figure told only when it looks sure by luck is off by more than it says.
 */
const leastSureness = 4;
const leastSeMm = 0.3;

/**
 * The pith at c + n / curvature, its error from the covariance of (normal, curvature):
 *
 *     se^2 = (se curvature / curvature^2)^2 + (se normal / curvature)^2
 */
export function pithFromRings({ family, covariance }: FittedRings): PithFound {
  const [normal, , curve] = covariance;
  const bend = Math.abs(family.curvature);
  const se = Math.sqrt(curve);
  if (bend === 0 || bend < leastSureness * se) {
    return { kind: 'far', atLeastMm: 1 / (bend + 2 * se) };
  }
  const seMm = Math.hypot(se / bend ** 2, Math.sqrt(normal) / bend, leastSeMm);
  return { kind: 'told', ...pithOf(family), seMm };
}
