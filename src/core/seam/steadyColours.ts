import type { Lab } from '../colour/lab.js';

/** Colours of one side's stretches summed, so that the mean of many neighbours is quick. */
export interface SteadyColours {
  /** How many of the stretches before the i-th count. */
  readonly before: Int32Array;
  /** Running sums of L*, a*, b* over those that count. */
  readonly sums: readonly Float64Array[];
}

/** @param counts which stretches count. */
export function steadyColours(colours: readonly Lab[], counts: readonly boolean[]): SteadyColours {
  const n = colours.length;
  const before = new Int32Array(n + 1);
  const sums = [0, 1, 2].map(() => new Float64Array(n + 1));
  let m = 0;
  for (let i = 0; i < n; i++) {
    if (counts[i]) {
      for (let c = 0; c < 3; c++) sums[c][m + 1] = sums[c][m] + colours[i][c];
      m++;
    }
    before[i + 1] = m;
  }
  return { before, sums };
}

/** Mean of those that count from the i-th up to the k-th. */
export function meanColour({ before, sums }: SteadyColours, i: number, k: number): Lab {
  const [from, to] = [before[i], before[k]];
  const mean = (c: number) => (sums[c][to] - sums[c][from]) / (to - from);
  return [mean(0), mean(1), mean(2)];
}
