import type { LineMeasures } from '../seam/lineMeasures.js';
import { type ChannelSums, channels } from '../seam/visibilityFromSums.js';
import { windowCues } from '../seam/windowCues.js';

/** Running sums of every channel along a line, so that any part of it is summed in no time. */
export interface LineSums {
  /** Length of one stretch, mm. */
  readonly stretchMm: number;
  readonly stretches: number;
  /** Per channel: after i stretches, at [3 i], [3 i + 1], [3 i + 2]: count, sum of x^2, of x^3. */
  readonly running: readonly Float64Array[];
}

/** @param keep which stretches count (not those on a marked knot). */
export function lineSums(
  line: LineMeasures,
  distanceMm: number,
  keep: (atMm: number) => boolean = () => true,
): LineSums {
  const stretches = line.windows.length;
  const running = channels.map(() => new Float64Array(3 * stretches + 3));
  line.windows.forEach((window, i) => {
    const strengths = keep(window.atMm) ? windowCues(window, distanceMm) : null;
    channels.forEach(({ strength }, k) => {
      const sums = running[k];
      const x = strengths && strength(strengths);
      sums[3 * i + 3] = sums[3 * i] + (x === null ? 0 : 1);
      sums[3 * i + 4] = sums[3 * i + 1] + (x ?? 0) ** 2;
      sums[3 * i + 5] = sums[3 * i + 2] + (x ?? 0) ** 3;
    });
  });
  const lengthMm = line.profileA.stepMm * line.u.length;
  return { stretchMm: lengthMm / stretches, stretches, running };
}

/** Sums between two places of the line; a stretch cut in two counts by its share. */
export function sumsBetween(line: LineSums, fromMm: number, toMm: number): ChannelSums {
  const { stretchMm, stretches, running } = line;
  const placed = (mm: number) => Math.min(stretches, Math.max(0, mm / stretchMm));
  const [from, to] = [placed(fromMm), placed(toMm)];
  const i = Math.min(stretches - 1, Math.floor(from));
  const j = Math.min(stretches - 1, Math.floor(to));
  const [p, q] = [from - i, to - j];
  return running.map((sums) => {
    const between = (which: number) => {
      const [a, b] = [sums[3 * i + which], sums[3 * i + 3 + which]];
      const [c, d] = [sums[3 * j + which], sums[3 * j + 3 + which]];
      return c + q * (d - c) - (a + p * (b - a));
    };
    return { count: between(0), squares: between(1), cubes: between(2) };
  });
}
