import type { ScoreResult } from '../../core/results/scoreResult.js';
import { describeSeam } from './describeSeam.js';
import { headlineOfScore } from './headlineOfScore.js';
import type { LengthUnits } from './lengthUnits.js';
import { placeSeams } from './placeSeams.js';

/** A score in words. */
export interface ScoreWords {
  /** The answer as a sentence or two. */
  readonly headline: string;
  /** One line per seam, from the top down, then the notes of the whole panel. */
  readonly lines: readonly string[];
}

/**
 * Says a score as a maker would at the bench.
 * @param result what `score` measured
 * @param units inches with the marks per inch of the maker's rule, or millimetres
 */
export function describeScore(result: ScoreResult, units: LengthUnits): ScoreWords {
  return {
    headline: headlineOfScore(result, units),
    lines: [...placeSeams(result).map((placed) => describeSeam(placed, units)), ...result.notes],
  };
}
