import type { Lab } from '../colour/lab.js';

/** Colours of one side's stretches, those that count, so that neighbours are taken together quickly. */
export interface SteadyColours {
  /** How many of the stretches before the i-th count. */
  readonly before: Int32Array;
  /** Running sums of L*, a*, b* over those that count. */
  readonly sums: readonly Float64Array[];
  /** Their part along a line of colour, one after the other. */
  readonly along: Float64Array;
}

/**
 * @param counts which stretches count. @param figure the line of colour, a unit vector.
 */
export function steadyColours(
  colours: readonly Lab[],
  counts: readonly boolean[],
  figure: Lab,
): SteadyColours {
  const n = colours.length;
  const before = new Int32Array(n + 1);
  const along = new Float64Array(n);
  const sums = [0, 1, 2].map(() => new Float64Array(n + 1));
  let m = 0;
  for (let i = 0; i < n; i++) {
    if (counts[i]) {
      const lab = colours[i];
      for (let c = 0; c < 3; c++) sums[c][m + 1] = sums[c][m] + lab[c];
      along[m++] = lab[0] * figure[0] + lab[1] * figure[1] + lab[2] * figure[2];
    }
    before[i + 1] = m;
  }
  return { before, sums, along: along.subarray(0, m) };
}

/** Mean of those that count from the i-th up to the k-th. */
export function meanColour({ before, sums }: SteadyColours, i: number, k: number): Lab {
  const [from, to] = [before[i], before[k]];
  const mean = (c: number) => (sums[c][to] - sums[c][from]) / (to - from);
  return [mean(0), mean(1), mean(2)];
}
