import { ciede2000 } from '../colour/ciede2000.js';
import type { Lab } from '../colour/lab.js';
import { runningSums, sumWithin } from '../image/runningSums.js';
import { clearMm, figureColour } from './figureColour.js';
import type { ReadSide } from './readSide.js';
import type { SeamWood } from './seamWood.js';

/** Widths of the bands compared, mm: half a degree at 0.3, 0.6, 1.2, 2.3 and 3.4 m. */
export const colourBandsMm: readonly number[] = [2.6, 5.2, 10.5, 20, 30];

/** A step is followed over so many stretches to either side (a decimetre each way at 600 mm). */
const alongStretches = 10;

/** The colours on one side of a joint. */
type ColourSide = Pick<ReadSide, 'lab' | 'etaMm'>;

/** A stretch of a joint, mm along it. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
}

/** A step of colour, and its parts along and beside the boards' own figure (`figureColour`), CIEDE2000. */
export interface ColourStep {
  readonly deltaE: number;
  readonly alongDeltaE: number;
  readonly besideDeltaE: number;
}

/**
 * Colour difference (CIEDE2000) between the bands on the two sides of a joint, for each stretch of
 * it and each band width.
 *
 * Colours are averaged over the neighbouring stretches before they are compared: between boards the
 * step is the same all along and stays, the figure's own steps (a band of latewood that the line
 * grazes) come and go and cancel. How far an eye follows an edge is an assumption.
 *
 * A line of a glued panel beside its joint (eta = 0) is read on its own board only: a band that
 * reached over the joint would take the joint's own step for the board's figure.
 *
 * @param a, b the colours and the line where each side ends. @param slideMm how far side A has moved
 *   along the joint.
 * @returns the step of a stretch for an entry of `colourBandsMm`, worked out when first asked for; a
 *   band cut off by the board's edge is as wide as the board allows.
 */
export function colourSteps(
  a: ColourSide,
  b: ColourSide,
  stretches: readonly Stretch[],
  slideMm: number,
): (stretch: number, band: number) => ColourStep {
  const oneLine = a.lab === b.lab && a.etaMm === b.etaMm;
  const deepestMm = (side: -1 | 1) =>
    oneLine && a.etaMm * side < 0 ? Math.abs(a.etaMm) - clearMm : Number.POSITIVE_INFINITY;
  const { plane, pxPerMm } = a.lab[0];
  // Where side A has been slid away there is nothing beside B to compare it with.
  const beside = stretches.map(
    ({ fromMm, toMm }) => fromMm >= slideMm && toMm - slideMm <= plane.width / pxPerMm + 1,
  );
  const figure = figureColour(a.lab, b.lab);
  const known = new Map<number, ColourStep[]>();
  return (stretch, band) => {
    const steps =
      known.get(band) ??
      stepsBetween(
        bandMeans(a, -1, band, stretches, slideMm, deepestMm(-1)),
        bandMeans(b, 1, band, stretches, 0, deepestMm(1)),
        beside,
        figure,
      );
    known.set(band, steps);
    return steps[stretch];
  };
}

/** The step in every stretch, both sides averaged over the stretches about it that count. */
function stepsBetween(
  above: readonly Lab[],
  below: readonly Lab[],
  counts: readonly boolean[],
  figure: Lab,
): ColourStep[] {
  const [sumsA, sumsB] = [steadySums(above, counts), steadySums(below, counts)];
  return counts.map((_, k) => {
    const from = Math.max(0, k - alongStretches);
    const to = Math.min(counts.length, k + alongStretches + 1);
    if (sumsA[to].count === sumsA[from].count) return partedStep(above[k], below[k], figure);
    return partedStep(
      meanBetween(sumsA[from], sumsA[to]),
      meanBetween(sumsB[from], sumsB[to]),
      figure,
    );
  });
}

function partedStep(a: Lab, b: Lab, figure: Lab): ColourStep {
  const step = b.map((x, c) => x - a[c]);
  const part = step.reduce((sum, x, c) => sum + x * figure[c], 0);
  const middle = a.map((x, c) => (x + b[c]) / 2);
  const differing = (d: (c: number) => number) =>
    ciede2000(
      [middle[0] - d(0) / 2, middle[1] - d(1) / 2, middle[2] - d(2) / 2],
      [middle[0] + d(0) / 2, middle[1] + d(1) / 2, middle[2] + d(2) / 2],
    );
  return {
    deltaE: ciede2000(a, b),
    alongDeltaE: differing((c) => part * figure[c]),
    besideDeltaE: differing((c) => step[c] - part * figure[c]),
  };
}

/** Colours summed over the stretches that count, up to one of them. */
interface SteadySum {
  readonly count: number;
  readonly lab: Lab;
}

function steadySums(side: readonly Lab[], counts: readonly boolean[]): SteadySum[] {
  let sum: SteadySum = { count: 0, lab: [0, 0, 0] };
  const sums = [sum];
  side.forEach(([l, a, b], i) => {
    const { count, lab } = sum;
    if (counts[i]) sum = { count: count + 1, lab: [lab[0] + l, lab[1] + a, lab[2] + b] };
    sums.push(sum);
  });
  return sums;
}

function meanBetween(from: SteadySum, to: SteadySum): Lab {
  const mean = (c: number) => (to.lab[c] - from.lab[c]) / (to.count - from.count);
  return [mean(0), mean(1), mean(2)];
}

/** Mean L*, a*, b* of one band on one side, stretch by stretch. */
function bandMeans(
  { lab, etaMm }: ColourSide,
  side: -1 | 1,
  band: number,
  stretches: readonly Stretch[],
  slideMm: number,
  deepestMm: number,
): Lab[] {
  const { pxPerMm, reachAMm, plane } = lab[0];
  const { width, height } = plane;
  const line = (etaMm + reachAMm) * pxPerMm - 0.5;
  const clear = line + side * clearMm * pxPerMm;
  const first = side < 0 ? Math.floor(clear) : Math.ceil(clear);
  const end = line + side * Math.min(clearMm + colourBandsMm[band], deepestMm) * pxPerMm;
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
