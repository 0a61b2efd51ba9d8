import { useEffect, useEffectEvent, useRef } from 'react';
import type { ScoreOptions } from '../../core/pipeline/scoreOptions.js';
import { panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { type ScoreAnswer, useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import { mergeRescore, rescoreOptions } from './rescore.js';

/**
 * Keeps a score's words in step with the viewing distance: as the slider moves, the known joints
 * are measured again, one request at a time, always for the newest distance.
 */
export function useDistance(
  photo: Photo | null,
  answer: ScoreAnswer | undefined,
  options: ScoreOptions | null,
): void {
  const busy = useRef(false);
  const measure = useEffectEvent(async (question: string) => {
    if (!photo || !answer || !options || busy.current) return;
    busy.current = true;
    const { distanceMm } = options;
    try {
      const { panel } = await panelOf(photo);
      const input = { photo: panel, options: rescoreOptions(options, answer.result) };
      const again = await jobs.start('score', input).result;
      useWorkbench.setState(({ scores }) => {
        // Meanwhile a joint may have been moved: then this answers a question nobody asks.
        if (scores[photo.id]?.question !== question) return {};
        const result = mergeRescore(scores[photo.id]!.result, again);
        return { scores: { ...scores, [photo.id]: { question, distanceMm, result } } };
      });
    } catch (thrown) {
      tellProblem(thrown, 'Changing the distance');
    } finally {
      busy.current = false;
    }
  });
  const due = answer && options && answer.distanceMm !== options.distanceMm ? answer : null;
  const wanted = options?.distanceMm;
  // biome-ignore lint/correctness/useExhaustiveDependencies: runs again when the distance moves on
  useEffect(() => {
    if (due) measure(due.question);
  }, [due, wanted]);
}
