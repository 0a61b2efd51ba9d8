import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { Photo, Settings } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import { scoreQuestion } from './scoreQuestion.js';
import { shownScore } from './shownScore.js';
import { askAgain, questionOf, useAnswer, wasCancelled } from './useAnswer.js';
import { useDistance } from './useDistance.js';

/** A photo's score, as the page shows it. */
export interface ShownScore {
  readonly score: ScoreResult | null;
  /** It answers what is asked now; else it is an older one. */
  readonly fresh: boolean;
  /** Asks again after a stop or a failure; null when there is nothing to ask. */
  readonly ask: (() => void) | null;
}

/** The photo's score, asked for whenever what it depends on changes. */
export function useScore(photo: Photo, settings: Settings): ShownScore {
  const have = useWorkbench(({ scores }) => scores[photo.id]);
  const options = scoreQuestion(photo, settings);
  // The distance is no part of the question: `useDistance` follows it without finding anew.
  const { distanceMm, ...question } = options;
  const fresh = useAnswer<ScoreResult>(photo, {
    question,
    label: 'Scoring the joints',
    start: (panel, progress) => jobs.start('score', { photo: panel, options }, { progress }),
    keep: (photoId, answer) =>
      useWorkbench.setState(({ scores }) => ({
        scores: { ...scores, [photoId]: { ...answer, distanceMm } },
      })),
    have,
  });
  useDistance(photo, fresh ? have : undefined, options);
  const whole = questionOf(photo, question);
  return {
    score: have ? shownScore(have.result, photo) : null,
    fresh: fresh && have?.distanceMm === distanceMm,
    ask: wasCancelled(whole) ? () => askAgain(whole) : null,
  };
}
