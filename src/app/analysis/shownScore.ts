import type { ScoreResult } from '../../core/results/scoreResult.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { sameSeam } from '../geometry/sameSeam.js';
import type { Photo } from '../state/project.js';

/** A score without the seams that the maker took away; the panel's word is its worst one left. */
export function shownScore(result: ScoreResult, photo: Photo): ScoreResult {
  const seams = result.seams.filter(
    ({ found, line }) =>
      found === 'placed' || !photo.droppedSeams.some((dropped) => sameSeam(dropped, line)),
  );
  if (seams.length === result.seams.length) return result;
  const told = seams.map(({ visibility }) => visibility.v).filter((v) => v !== null);
  const v = told.length > 0 ? Math.max(...told) : null;
  return { ...result, seams, visibility: { v, word: levelOfVisibility(v)?.word ?? null } };
}
