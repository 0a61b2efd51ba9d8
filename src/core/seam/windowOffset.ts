import type { WindowMeasures } from './lineMeasures.js';
import { spacingMm } from './spacingMm.js';

/** How far the grain lines step in one stretch of the seam. */
export interface WindowOffset {
  /** Across the grain, wrapped to +-spacing/2; positive as delta = g cos(theta) - u sin(theta). */
  readonly offsetMm: number;
  readonly spacingMm: number;
  /** Strength of what the two sides share, 0..1. */
  readonly agreement: number;
}

const triesPerSpacing = 64;
/** Rounding of a blank picture; lines of a contrast below 3e-5 are none (product of two amplitudes). */
const leastShared = 1e-9;

/** The joint's offset and the stretches' own are read off the same windows. */
const known = new WeakMap<WindowMeasures, WindowOffset | null>();

/**
 * Offset of the lines of side B against those of side A: the shift in the across-grain
 * coordinate at which the octaves' cross terms agree best,
 * max over d of sum Re(A conj(B) exp(-2 pi i nu d)) within half a spacing.
 *
 * @returns null where no lines cross.
 */
export function windowOffset(window: WindowMeasures): WindowOffset | null {
  const before = known.get(window);
  if (before !== undefined) return before;
  const offset = offsetOf(window);
  known.set(window, offset);
  return offset;
}

function offsetOf(window: WindowMeasures): WindowOffset | null {
  const { bands } = window;
  if (bands.length === 0) return null;
  const spacing = Math.sqrt(spacingMm(bands, 'A') * spacingMm(bands, 'B'));
  const most = bands.reduce((sum, b) => sum + Math.hypot(b.crossRe, b.crossIm), 0);
  if (!(most > leastShared)) return null;
  const agreementAt = (d: number) =>
    bands.reduce((sum, b) => {
      const turn = 2 * Math.PI * b.frequencyPerMm * d;
      return sum + b.crossRe * Math.cos(turn) + b.crossIm * Math.sin(turn);
    }, 0) / most;
  let best = 0;
  let top = agreementAt(0);
  for (let k = -triesPerSpacing / 2; k <= triesPerSpacing / 2; k++) {
    const d = (k * spacing) / triesPerSpacing;
    const value = agreementAt(d);
    if (value > top) [best, top] = [d, value];
  }
  best += topOfParabola(agreementAt, best, spacing / triesPerSpacing);
  const sign = Math.sin(window.angleARad) + Math.sin(window.angleBRad) < 0 ? -1 : 1;
  return { offsetMm: sign * best, spacingMm: spacing, agreement: top };
}

/** How far from x, within a step, the top of the parabola through three tries lies. */
function topOfParabola(f: (x: number) => number, x: number, step: number): number {
  const [a, b, c] = [f(x - step), f(x), f(x + step)];
  const bend = a - 2 * b + c;
  if (!(bend < 0)) return 0;
  return step * Math.max(-1, Math.min(1, (0.5 * (a - c)) / bend));
}
