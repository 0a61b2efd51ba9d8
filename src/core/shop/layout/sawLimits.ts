/**
 * Sizes below which this job stops being ordinary table saw work.
 * Common practice, no published source: shops differ, the saw's manual decides.
 */
export interface SawLimits {
  /** Between fence and blade: below this, push blocks instead of a hand. */
  readonly pushBlockWidthMm: number;
  /** Between fence and blade: below this, not on this saw in this way. */
  readonly leastRipWidthMm: number;
  /** Edge along the fence: below this, not against the fence. */
  readonly leastRipLengthMm: number;
  /** Along the sled's fence: below this, clamp the piece instead of holding it. */
  readonly clampLengthMm: number;
  /** Along the sled's fence: below this, not on the saw. */
  readonly leastCrosscutLengthMm: number;
  /** Jointer: below this, a hand plane. */
  readonly leastJointerLengthMm: number;
}

/** 6 in, 1 1/2 in, 12 in, 6 in, 2 in, 12 in [common practice, no published source]. */
export const usualSawLimits: SawLimits = {
  pushBlockWidthMm: 152.4,
  leastRipWidthMm: 38.1,
  leastRipLengthMm: 304.8,
  clampLengthMm: 152.4,
  leastCrosscutLengthMm: 50.8,
  leastJointerLengthMm: 304.8,
};
