import type { Placement } from './panelSpec.js';

/** The placement that undoes `placement`. */
export function invertPlacement({ a, b, c, d, e, f }: Placement): Placement {
  const det = a * e - b * d;
  return {
    a: e / det,
    b: -b / det,
    c: (b * f - c * e) / det,
    d: -d / det,
    e: a / det,
    f: (c * d - a * f) / det,
  };
}
