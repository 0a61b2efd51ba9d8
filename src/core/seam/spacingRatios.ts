import type { BandPair } from './bandAmplitudes.js';
import { alongStretches, commonShift } from './commonShift.js';
import { spacingMm } from './spacingMm.js';

/** Fewer lines than this that cross on the way do not tell how far apart lines are. */
const fewestLines = 3;

/** One stretch of a joint as its lines cross it. */
export interface CrossingLines {
  /** Octaves of the lines; none where no line crosses. */
  readonly bands: readonly BandPair[];
  /** Where the stretch begins and ends in the across-grain coordinate, mm. */
  readonly fromUMm: number;
  readonly toUMm: number;
}

/**
 * How far apart the lines are on B over A in every stretch of a joint: the ratio that narrow and wide
 * lines along it have in common (`commonShift` of the logarithms).
 *
 * Rings differ in width by a third from one to the next, so the lines that meet at one place mostly
 * differ though nothing was cut; another board, or wood nearer the pith, has them closer all along.
 *
 * @returns null where no line crosses, or fewer than three on the way.
 */
export function spacingRatios(stretches: readonly CrossingLines[]): (number | null)[] {
  const n = stretches.length;
  // Stretches that lines cross, one after the other; running sums so that many are added quickly.
  const before = new Int32Array(n + 1);
  const [lnA, lnB] = [new Float64Array(n), new Float64Array(n)];
  const [lnSum, crossedMm] = [new Float64Array(n + 1), new Float64Array(n + 1)];
  let m = 0;
  stretches.forEach(({ bands, fromUMm, toUMm }, i) => {
    if (bands.length > 0) {
      lnA[m] = Math.log(spacingMm(bands, 'A'));
      lnB[m] = Math.log(spacingMm(bands, 'B'));
      lnSum[m + 1] = lnSum[m] + lnA[m] + lnB[m];
      crossedMm[m + 1] = crossedMm[m] + toUMm - fromUMm;
      m++;
    }
    before[i + 1] = m;
  });
  return stretches.map(({ bands }, k) => {
    if (bands.length === 0) return null;
    const first = before[Math.max(0, k - alongStretches)];
    const end = before[Math.min(n, k + alongStretches + 1)];
    const meanMm = Math.exp((lnSum[end] - lnSum[first]) / (2 * (end - first)));
    if (crossedMm[end] - crossedMm[first] < fewestLines * meanMm) return null;
    return Math.exp(commonShift(lnA.subarray(first, end), lnB.subarray(first, end)));
  });
}
