const bins = 128;

/**
 * The value that parts a set into two groups with the least scatter inside them.
 * @param values any numbers of zero or more
 * @returns the threshold and the two groups' means
 * Source: Otsu 1979, IEEE Trans. SMC 9(1):62-66.
 */
export function otsuThreshold(values: Float32Array): {
  threshold: number;
  lowMean: number;
  highMean: number;
} {
  const top = values.reduce((most, value) => Math.max(most, value), 1e-6);
  const counts = new Float64Array(bins);
  for (const value of values) counts[Math.min(bins - 1, Math.floor((value / top) * bins))]++;
  const centre = (bin: number) => ((bin + 0.5) * top) / bins;
  const total = counts.reduce((sum, count, bin) => sum + count * centre(bin), 0);
  let best = { threshold: 0, lowMean: 0, highMean: 0 };
  let bestBetween = -1;
  let low = 0;
  let lowSum = 0;
  for (let bin = 0; bin < bins - 1; bin++) {
    low += counts[bin];
    lowSum += counts[bin] * centre(bin);
    const high = values.length - low;
    if (low === 0 || high === 0) continue;
    const lowMean = lowSum / low;
    const highMean = (total - lowSum) / high;
    const between = low * high * (highMean - lowMean) ** 2;
    if (between > bestBetween) {
      bestBetween = between;
      best = { threshold: ((bin + 1) * top) / bins, lowMean, highMean };
    }
  }
  return best;
}
