import type { LineMm } from '../results/scoreResult.js';

/** A region of the panel to leave out of every measurement (a knot, glare): corners in panel millimetres. */
export type LeftOutRegion = readonly (readonly [xMm: number, yMm: number])[];

/** What `scorePanel` is asked to do; see `defaultScoreOptions`. */
export interface ScoreOptions {
  /** Viewing distance, 100..20000 mm. */
  readonly distanceMm: number;
  /** Kerf of the saw that made the joints, mm: the first guess for the width lost. */
  readonly kerfMm: number;
  /** Seams placed by hand; scored whether or not the photo shows them. */
  readonly placedSeams: readonly LineMm[];
  /** Look for seams in the photo as well. */
  readonly find: boolean;
  /** Seed of the shuffles behind p. */
  readonly seed: number;
  readonly leftOut: readonly LeftOutRegion[];
}

/** 600 mm away, a full 1/8 in kerf, seams looked for, none placed. */
export const defaultScoreOptions: ScoreOptions = {
  distanceMm: 600,
  kerfMm: 3.175,
  placedSeams: [],
  find: true,
  seed: 1,
  leftOut: [],
};
