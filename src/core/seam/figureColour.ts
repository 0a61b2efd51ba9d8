import type { Lab } from '../colour/lab.js';
import type { SeamWood } from './seamWood.js';

type LabStrips = SeamWood['lab'];

/** Second moments of L*, a*, b* about each side's own mean: [LL, La, Lb, aa, ab, bb]. */
type Scatter = readonly [number, number, number, number, number, number];

/** The glue line and the lens blur are left out of all colours on each side of the line, mm. */
export const clearMm = 0.7;

/**
 * The direction in L*a*b* in which the boards' own figure runs: from earlywood to latewood.
 *
 * Rings, pores and streaks of one wood differ nearly along one line of colour (light to dark and
 * a little browner); another board's wood mostly lies beside that line. So a step along it is
 * hidden by the figure, a step beside it is not. First principal axis of the scatter of patches
 * about the mean of their own side, both sides together.
 *
 * @param a, b the colours on the two sides; the same for a joint in one photo.
 * @returns unit vector; L* where nothing differs.
 */
export function figureColour(a: LabStrips, b: LabStrips): Lab {
  const scatter = a === b ? scatterOf(a) : addScatter(scatterOf(a), scatterOf(b));
  return principalAxis(scatter);
}

/** A line takes part in many joints: the wood's scatter is summed once. */
const knownScatter = new WeakMap<LabStrips, Scatter>();

function scatterOf(lab: LabStrips): Scatter {
  const known = knownScatter.get(lab);
  if (known) return known;
  const { plane, pxPerMm, reachAMm } = lab[0];
  const line = reachAMm * pxPerMm;
  const above = sideScatter(lab, 0, Math.floor(line - clearMm * pxPerMm));
  const below = sideScatter(lab, Math.ceil(line + clearMm * pxPerMm), plane.height);
  const scatter = addScatter(above, below);
  knownScatter.set(lab, scatter);
  return scatter;
}

function sideScatter(lab: LabStrips, firstRow: number, endRow: number): Scatter {
  const { width } = lab[0].plane;
  const [l, a, b] = lab.map(({ plane }) => plane.data);
  const [from, to] = [firstRow * width, endRow * width];
  if (to <= from) return [0, 0, 0, 0, 0, 0];
  const mean = (values: ArrayLike<number>) => {
    let sum = 0;
    for (let i = from; i < to; i++) sum += values[i];
    return sum / (to - from);
  };
  const [meanL, meanA, meanB] = [mean(l), mean(a), mean(b)];
  const sums: [number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0];
  for (let i = from; i < to; i++) {
    const [dL, dA, dB] = [l[i] - meanL, a[i] - meanA, b[i] - meanB];
    sums[0] += dL * dL;
    sums[1] += dL * dA;
    sums[2] += dL * dB;
    sums[3] += dA * dA;
    sums[4] += dA * dB;
    sums[5] += dB * dB;
  }
  return sums;
}

const addScatter = (p: Scatter, q: Scatter) => p.map((x, i) => x + q[i]) as unknown as Scatter;

/** Steps of the power method; the axes of wood lie so far apart that a few do. */
const steps = 40;

function principalAxis([ll, la, lb, aa, ab, bb]: Scatter): Lab {
  let axis: Lab = [1, 0, 0];
  for (let k = 0; k < steps; k++) {
    const [l, a, b] = axis;
    const next = [ll * l + la * a + lb * b, la * l + aa * a + ab * b, lb * l + ab * a + bb * b];
    const length = Math.hypot(...next);
    if (!(length > 0)) return [1, 0, 0];
    axis = [next[0] / length, next[1] / length, next[2] / length];
  }
  return axis;
}
