import { useEffect } from 'react';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { Progress } from '../../core/progress.js';
import type { RunningJob } from '../../job/webWorkerClient.js';
import { panelKey, panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { type Answer, useWorkbench } from '../state/workbench.js';

const pauseMs = 120;

/** A kind of answer that a photo can be asked for. */
export interface Asking<T> {
  /** What the answer depends on beside the panel. */
  readonly question: unknown;
  /** While it runs, in a maker's words. */
  readonly label: string;
  readonly start: (panel: PanelPhoto, progress: Progress) => RunningJob<T>;
  readonly keep: (photoId: string, answer: Answer<T>) => void;
  readonly have: Answer<T> | undefined;
}

/** Questions that the maker cancelled: not asked again until something changes. */
const cancelled = new Set<string>();

/** Whether a question was stopped, or failed, and waits to be asked again. */
export const wasCancelled = (question: string): boolean => cancelled.has(question);

/** Forgets that a question was cancelled, so that it is asked anew. */
export function askAgain(question: string): void {
  cancelled.delete(question);
  useWorkbench.setState(({ asked }) => ({ asked: asked + 1 }));
}

/** The full question as one string. */
export const questionOf = (photo: Photo, question: unknown): string =>
  `${panelKey(photo)} ${JSON.stringify(question)}`;

/**
 * Asks the worker whenever what the answer depends on has changed, cancelling what is stale.
 * @returns whether the answer that is kept is the one to this very question
 */
export function useAnswer<T>(photo: Photo | null, asking: Asking<T>): boolean {
  const asked = useWorkbench((state) => state.asked);
  const question = photo?.scale ? questionOf(photo, asking.question) : null;
  const fresh = question !== null && asking.have?.question === question;
  useEffect(() => {
    if (!photo || question === null || fresh || cancelled.has(question)) return;
    let job: RunningJob<T> | null = null;
    let dropped = false;
    const stop = () => {
      dropped = true;
      job?.cancel();
      useWorkbench.setState(({ running }) =>
        running?.question === question ? { running: null } : {},
      );
    };
    const cancel = () => {
      cancelled.add(question);
      stop();
      useWorkbench.setState(({ asked: before }) => ({ asked: before + 1 }));
    };
    const show = (fraction: number, doing: string) => {
      if (dropped) return;
      const running = { question, label: asking.label, doing, fraction, cancel };
      useWorkbench.setState({ running });
    };
    const work = async () => {
      show(0, 'squaring the panel up');
      try {
        const { panel } = await panelOf(photo);
        if (dropped) return;
        job = asking.start(panel, show);
        const result = await job.result;
        if (!dropped) asking.keep(photo.id, { question, result });
      } catch (thrown) {
        if (!dropped) {
          cancelled.add(question);
          tellProblem(thrown, asking.label);
        }
      }
      if (!dropped) useWorkbench.setState({ running: null });
    };
    const timer = setTimeout(work, pauseMs);
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [question, fresh, asked]);
  return fresh;
}
