import type { ScoreOptions } from '../../core/pipeline/scoreOptions.js';
import type { ScoreResult } from '../../core/results/scoreResult.js';

/** The same joints measured again for another distance: nothing is looked for anew. */
export function rescoreOptions(options: ScoreOptions, known: ScoreResult): ScoreOptions {
  return { ...options, find: false, placedSeams: known.seams.map(({ line }) => line) };
}

/**
 * The answer for another distance, with what finding had told: which joints the photo showed, how
 * surely, and the notes. Equal to a whole new score, for finding does not depend on the distance.
 */
export function mergeRescore(known: ScoreResult, again: ScoreResult): ScoreResult {
  const seams = again.seams.map((seam, index) => {
    const { id, found, p } = known.seams[index]!;
    return { ...seam, id, found, p };
  });
  return { ...again, seams, notes: known.notes };
}
