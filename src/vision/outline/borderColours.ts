import type { LabPlanes } from '../../core/colour/labPlanes.js';

type LabTriple = readonly [number, number, number];

const borderShare = 0.03;
const rounds = 8;
const smallestShare = 0.08;

/**
 * The colours that the frame's border is made of: what the panel lies on, as up to three
 * cluster means (k-means started at the 10th, 50th and 90th percentile of lightness).
 * Clusters under 8 % of the border are dropped: a panel may touch the frame in places.
 */
export function borderColours({ lightness, a, b }: LabPlanes): LabTriple[] {
  const { width, height } = lightness;
  const depth = Math.max(2, Math.round(borderShare * Math.min(width, height)));
  const border: LabTriple[] = [];
  for (let y = 0; y < height; y++) {
    const inRows = y < depth || y >= height - depth;
    for (let x = 0; x < width; x++) {
      if (!inRows && x >= depth && x < width - depth) continue;
      const i = y * width + x;
      border.push([lightness.data[i], a.data[i], b.data[i]]);
    }
  }
  border.sort((p, q) => p[0] - q[0]);
  let means = [0.1, 0.5, 0.9].map((part) => border[Math.floor(part * border.length)]);
  let counts: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const sums = means.map(() => [0, 0, 0, 0]);
    for (const colour of border) {
      const sum = sums[nearestColour(means, colour).index];
      colour.forEach((value, i) => {
        sum[i] += value;
      });
      sum[3]++;
    }
    counts = sums.map((sum) => sum[3]);
    means = sums.map((sum, k) =>
      sum[3] ? [sum[0] / sum[3], sum[1] / sum[3], sum[2] / sum[3]] : means[k],
    );
  }
  return means.filter((_, k) => counts[k] >= smallestShare * border.length);
}

/** Which of the colours is nearest, and how far in L*a*b*. */
export function nearestColour(
  colours: readonly LabTriple[],
  [l, a, b]: LabTriple,
): { index: number; distance: number } {
  let index = 0;
  let least = Number.POSITIVE_INFINITY;
  colours.forEach((colour, k) => {
    const square = (colour[0] - l) ** 2 + (colour[1] - a) ** 2 + (colour[2] - b) ** 2;
    if (square < least) {
      least = square;
      index = k;
    }
  });
  return { index, distance: Math.sqrt(least) };
}
