/** A stream of repeatable random numbers; the same seed always gives the same stream. */
export interface RandomSource {
  /** Uniform in [0, 1). */
  next(): number;
  /** Uniform in [low, high). */
  uniform(low: number, high: number): number;
  /** Whole number in 0 .. count - 1. */
  integer(count: number): number;
  /** Normal deviate with the given mean (default 0) and standard deviation (default 1). */
  normal(mean?: number, standardDeviation?: number): number;
}
