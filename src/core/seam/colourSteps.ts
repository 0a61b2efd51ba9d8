import { ciede2000 } from '../colour/ciede2000.js';
import { runningSums, sumWithin } from '../image/runningSums.js';
import type { LineSide, SeamWood } from './seamWood.js';

/** Widths of the bands compared, mm: half a degree at 0.3, 0.6, 1.2, 2.3 and 3.4 m. */
export const colourBandsMm: readonly number[] = [2.6, 5.2, 10.5, 20, 30];

/** The glue line and the lens blur are left out on each side of the line, mm. */
const clearMm = 0.7;

/** A step is followed over so many stretches to either side (a decimetre each way at 600 mm). */
const alongStretches = 10;

/** A stretch of a joint, mm along it. */
export interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
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
 * @param a, b the wood and the line where each side ends. @param slideMm how far side A has moved
 *   along the joint.
 * @returns per stretch one step per entry of `colourBandsMm`; a band cut off by the board's edge is
 *   as wide as the board allows.
 */
export function colourSteps(
  a: LineSide,
  b: LineSide,
  stretches: readonly Stretch[],
  slideMm: number,
): number[][] {
  const oneLine = a.wood === b.wood && a.etaMm === b.etaMm;
  const deepestMm = (side: -1 | 1) =>
    oneLine && a.etaMm * side < 0 ? Math.abs(a.etaMm) - clearMm : Number.POSITIVE_INFINITY;
  const above = stretches.map(({ fromMm, toMm }) =>
    bandMeans(a.wood, a.etaMm, -1, fromMm - slideMm, toMm - slideMm, deepestMm(-1)),
  );
  const below = stretches.map(({ fromMm, toMm }) =>
    bandMeans(b.wood, b.etaMm, 1, fromMm, toMm, deepestMm(1)),
  );
  const { plane, pxPerMm } = a.wood.lab[0];
  // Where side A has been slid away there is nothing beside B to compare it with.
  const beside = stretches.map(
    ({ fromMm, toMm }) => fromMm >= slideMm && toMm - slideMm <= plane.width / pxPerMm + 1,
  );
  const steady = [above, below].map((side) => steadySums(side, beside));
  return stretches.map((_, k) => {
    const from = Math.max(0, k - alongStretches);
    const to = Math.min(stretches.length, k + alongStretches + 1);
    return colourBandsMm.map((_, band) => {
      const [a, b] = steady.map((sums, side) => {
        const count = sums[to].count - sums[from].count;
        if (count === 0) return (side === 0 ? above : below)[k][band];
        const mean = (c: number) => (sums[to].lab[band][c] - sums[from].lab[band][c]) / count;
        return [mean(0), mean(1), mean(2)] as const;
      });
      return ciede2000(a, b);
    });
  });
}

/** Colours summed over the stretches that count, up to every one. */
function steadySums(side: readonly LabTriple[][], counts: readonly boolean[]) {
  let [count, lab] = [0, colourBandsMm.map((): LabTriple => [0, 0, 0])];
  const sums = [{ count, lab }];
  side.forEach((bands, i) => {
    if (counts[i]) {
      count++;
      lab = lab.map((sum, band): LabTriple => {
        const [l, a, b] = bands[band];
        return [sum[0] + l, sum[1] + a, sum[2] + b];
      });
    }
    sums.push({ count, lab });
  });
  return sums;
}

type LabTriple = [number, number, number];

/** Mean L*, a*, b* of each band on one side, from the line outwards. */
function bandMeans(
  wood: SeamWood,
  etaMm: number,
  side: -1 | 1,
  xiFromMm: number,
  xiToMm: number,
  deepestMm: number,
): LabTriple[] {
  const { pxPerMm, reachAMm, plane } = wood.lab[0];
  const { width, height } = plane;
  const from = Math.min(width - 1, Math.max(0, Math.round(xiFromMm * pxPerMm)));
  const to = Math.min(width, Math.max(from + 1, Math.round(xiToMm * pxPerMm)));
  const sums = labSums(wood);
  const line = (etaMm + reachAMm) * pxPerMm - 0.5;
  const clear = line + side * clearMm * pxPerMm;
  const first = side < 0 ? Math.floor(clear) : Math.ceil(clear);
  return colourBandsMm.map((band): LabTriple => {
    const end = line + side * Math.min(clearMm + band, deepestMm) * pxPerMm;
    const last = side < 0 ? Math.max(0, Math.ceil(end)) : Math.min(height - 1, Math.floor(end));
    if (first < 0 || first >= height || side * (last - first) < 0) return [0, 0, 0];
    const [top, bottom] = [Math.min(first, last), Math.max(first, last) + 1];
    const mean = (c: number) =>
      sumWithin(sums[c], width, from, top, to, bottom) / ((to - from) * (bottom - top));
    return [mean(0), mean(1), mean(2)];
  });
}

/** A line takes part in many joints, and lines of one wood lie close together: summed once. */
const known = new WeakMap<SeamWood, readonly Float64Array[]>();

function labSums(wood: SeamWood): readonly Float64Array[] {
  const sums = known.get(wood) ?? wood.lab.map(({ plane }) => runningSums(plane));
  known.set(wood, sums);
  return sums;
}
