import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { Photo, Settings } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import { scoreQuestion } from './scoreQuestion.js';
import { shownScore } from './shownScore.js';
import { askAgain, questionOf, useAnswer, wasCancelled } from './useAnswer.js';

/** The photo's score as the page shows it, kept up to date; `fresh` says it is not an older one. */
export function useScore(
  photo: Photo | null,
  settings: Settings,
): {
  readonly score: ScoreResult | null;
  readonly fresh: boolean;
  /** Asks again after a stop; null when there is nothing to ask. */
  readonly ask: (() => void) | null;
} {
  const have = useWorkbench(({ scores }) => (photo ? scores[photo.id] : undefined));
  const options = photo ? scoreQuestion(photo, settings) : null;
  const fresh = useAnswer<ScoreResult>(photo, {
    question: options,
    label: 'Scoring the joints',
    start: (panel, progress) => jobs.start('score', { panel, options: options! }, { progress }),
    keep: (photoId, answer) =>
      useWorkbench.setState(({ scores }) => ({ scores: { ...scores, [photoId]: answer } })),
    have,
  });
  const stopped = photo !== null && wasCancelled(questionOf(photo, options));
  return {
    score: have && photo ? shownScore(have.result, photo) : null,
    fresh,
    ask: stopped ? () => askAgain(questionOf(photo, options)) : null,
  };
}
