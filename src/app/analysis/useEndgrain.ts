import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import { askAgain, questionOf, useAnswer, wasCancelled } from './useAnswer.js';

/** An end's answer, as the page shows it. */
export interface ShownEnd {
  readonly end: EndgrainResult | null;
  readonly fresh: boolean;
  /** Asks again after a stop or a failure; null when there is nothing to ask. */
  readonly ask: (() => void) | null;
}

/** How the board in the photo was sawn, from its rings or from tangents laid by hand. */
export function useEndgrain(photo: Photo): ShownEnd {
  const have = useWorkbench(({ ends }) => ends[photo.id]);
  const tangents = photo.ringTangents;
  const question = { tangents };
  const options = tangents.length > 0 ? { placed: { tangents, pith: null } } : {};
  const fresh = useAnswer<EndgrainResult>(photo, {
    question,
    label: 'Reading the end',
    start: (panel, progress) => jobs.start('endgrain', { photo: panel, options }, { progress }),
    keep: (photoId, answer) =>
      useWorkbench.setState(({ ends }) => ({ ends: { ...ends, [photoId]: answer } })),
    have,
  });
  const whole = questionOf(photo, question);
  return {
    end: have?.result ?? null,
    fresh,
    ask: wasCancelled(whole) ? () => askAgain(whole) : null,
  };
}
