import type { Lab } from '../colour/lab.js';
import { runningSums, sumWithin } from '../image/runningSums.js';
import type { ReadSide } from './readSide.js';
import type { SeamWood } from './seamWood.js';

/** The colours on one side of a joint, and the line where it ends. */
export type ColourSide = Pick<ReadSide, 'lab' | 'etaMm'>;

/** A stretch of a joint, mm along it. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * Mean L*, a*, b* of a band beside a line, stretch by stretch.
 *
 * @param side -1 above the line, 1 below. @param band from where to where, mm from the line.
 * @param slideMm how far the side has moved along the joint.
 */
export function bandMeans(
  { lab, etaMm }: ColourSide,
  side: -1 | 1,
  band: Stretch,
  stretches: readonly Stretch[],
  slideMm: number,
): Lab[] {
  const { pxPerMm, reachAMm, plane } = lab[0];
  const { width, height } = plane;
  const line = (etaMm + reachAMm) * pxPerMm - 0.5;
  const clear = line + side * band.fromMm * pxPerMm;
  const first = side < 0 ? Math.floor(clear) : Math.ceil(clear);
  const end = line + side * band.toMm * pxPerMm;
  const last = side < 0 ? Math.max(0, Math.ceil(end)) : Math.min(height - 1, Math.floor(end));
  if (first < 0 || first >= height || side * (last - first) < 0) {
    return stretches.map(() => [0, 0, 0]);
  }
  const [top, bottom] = [Math.min(first, last), Math.max(first, last) + 1];
  const sums = labSums(lab);
  return stretches.map(({ fromMm, toMm }) => {
    const from = Math.min(width - 1, Math.max(0, Math.round((fromMm - slideMm) * pxPerMm)));
    const to = Math.min(width, Math.max(from + 1, Math.round((toMm - slideMm) * pxPerMm)));
    const mean = (c: number) =>
      sumWithin(sums[c], width, from, top, to, bottom) / ((to - from) * (bottom - top));
    return [mean(0), mean(1), mean(2)];
  });
}

/** A line takes part in many joints, and lines of one wood lie close together: summed once. */
const knownSums = new WeakMap<SeamWood['lab'], readonly Float64Array[]>();

function labSums(lab: SeamWood['lab']): readonly Float64Array[] {
  const sums = knownSums.get(lab) ?? lab.map(({ plane }) => runningSums(plane));
  knownSums.set(lab, sums);
  return sums;
}
