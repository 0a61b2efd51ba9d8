/** Tail of the square of a normal variable, exp(-x / 2): no board is taken to be calmer. */
const leastTail = 2;

/**
 * Median and exponential tail of a set of squared line strengths: above the median they fall off
 * as exp(-(x - median) / tail), tail = (q70 - q50) / ln(5/3), not below 2. Between median and 70 %
 * point only, so that real seams and their flanks (up to three tenths of the lines) do not hide
 * each other.
 */
export function tailScale(values: readonly number[]): { median: number; tail: number } {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (q: number) => {
    const x = q * (sorted.length - 1);
    const i = Math.floor(x);
    const low = sorted[i] ?? 0;
    return low + (x - i) * ((sorted[i + 1] ?? low) - low);
  };
  return { median: at(0.5), tail: Math.max(leastTail, (at(0.7) - at(0.5)) / Math.log(5 / 3)) };
}
