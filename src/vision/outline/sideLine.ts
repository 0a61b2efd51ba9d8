import type { LabPlanes } from '../../core/colour/labPlanes.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { sampleBilinear } from '../../core/image/sampleBilinear.js';

const stations = 60;
const agreementPx = 1.5;

/** A refined side: how far it lies from the guess at either end, and how much backs it. */
export interface SideLine {
  /** Outward shift at the side's first and second end, px of the planes. */
  readonly shiftFrom: number;
  readonly shiftTo: number;
  /** Share of the places along the side that agree on the line. */
  readonly support: number;
  /** Median colour step over the line, L*a*b* units. */
  readonly step: number;
}

/**
 * Finds a panel's edge near a guessed side: at places along it, the strongest colour step over
 * the side; then the straight line that most of them agree on.
 * @param from the side's first corner, px of the planes (pixel (i, j) covers i .. i + 1)
 * @param to its second corner, clockwise from the first
 * @param reachPx how far from the guess to look
 */
export function sideLine(planes: LabPlanes, from: PointPx, to: PointPx, reachPx: number): SideLine {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const outward = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
  const places = Array.from({ length: stations }, (_, i) => 0.05 + (0.9 * (i + 0.5)) / stations);
  const found = places.map((t) => {
    const x = from.x + t * (to.x - from.x);
    const y = from.y + t * (to.y - from.y);
    return { t, ...strongestStep(planes, x, y, outward, reachPx) };
  });
  return bestLine(found);
}

interface Step {
  readonly t: number;
  readonly shift: number;
  readonly step: number;
}

/**
 * The shift along `outward` at which the colour changes most between the stretches on either side,
 * to a fraction of a pixel by the parabola through the peak.
 */
function strongestStep(
  { lightness, a, b }: LabPlanes,
  x: number,
  y: number,
  outward: PointPx,
  reachPx: number,
): { shift: number; step: number } {
  const stretch = Math.max(3, Math.round(reachPx / 3));
  const count = 2 * (Math.round(reachPx) + stretch) + 1;
  const sums = [lightness, a, b].map((plane) => {
    const sum = new Float64Array(count + 1);
    for (let i = 0; i < count; i++) {
      const shift = i - (count - 1) / 2;
      const value = sampleBilinear(plane, x + shift * outward.x - 0.5, y + shift * outward.y - 0.5);
      sum[i + 1] = sum[i] + value;
    }
    return sum;
  });
  const stepAt = (i: number) =>
    Math.hypot(...sums.map((sum) => (sum[i + stretch] - 2 * sum[i] + sum[i - stretch]) / stretch));
  let best = stretch + 1;
  for (let i = best + 1; i < count - stretch; i++) if (stepAt(i) > stepAt(best)) best = i;
  const [before, at, after] = [stepAt(best - 1), stepAt(best), stepAt(best + 1)];
  const bend = before - 2 * at + after;
  const between = bend < 0 ? Math.max(-1, Math.min(1, (before - after) / (2 * bend))) : 0;
  return { shift: best + between - count / 2, step: at };
}

/** The line through two found places that most others lie on, then least squares over those. */
function bestLine(found: readonly Step[]): SideLine {
  let agreeing: Step[] = [];
  for (let i = 0; i < found.length; i++) {
    for (let k = i + 8; k < found.length; k++) {
      const slope = (found[k].shift - found[i].shift) / (found[k].t - found[i].t);
      const near = found.filter(
        ({ t, shift }) => Math.abs(shift - found[i].shift - slope * (t - found[i].t)) < agreementPx,
      );
      if (near.length > agreeing.length) agreeing = near;
    }
  }
  const n = agreeing.length;
  const meanT = agreeing.reduce((sum, { t }) => sum + t, 0) / n;
  const meanShift = agreeing.reduce((sum, { shift }) => sum + shift, 0) / n;
  const tt = agreeing.reduce((sum, { t }) => sum + (t - meanT) ** 2, 0);
  const ts = agreeing.reduce((sum, { t, shift }) => sum + (t - meanT) * (shift - meanShift), 0);
  const slope = tt > 0 ? ts / tt : 0;
  const steps = agreeing.map(({ step }) => step).sort((p, q) => p - q);
  return {
    shiftFrom: meanShift - slope * meanT,
    shiftTo: meanShift + slope * (1 - meanT),
    support: n / found.length,
    step: steps[n >> 1],
  };
}
