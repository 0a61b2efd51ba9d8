/**
 * Median and exponential tail of a set of line strengths: above the median they fall off as
 * exp(-(x - median) / tail), tail = (q80 - q50) / ln 2.5. Between median and 80 % point only, so
 * that real seams among the lines (up to a fifth of them) do not hide each other.
 */
export function tailScale(values: readonly number[]): { median: number; tail: number } {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (q: number) => sorted[Math.floor(q * (sorted.length - 1))] ?? 0;
  return { median: at(0.5), tail: (at(0.8) - at(0.5)) / Math.log(2.5) + 1e-6 };
}
