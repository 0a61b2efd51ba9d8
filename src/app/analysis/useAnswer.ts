import { useEffect, useEffectEvent } from 'react';
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
  const waiting = question !== null && !fresh && !cancelled.has(question);
  const begin = useEffectEvent((of: string) => beginWork(photo!, of, asking));
  // biome-ignore lint/correctness/useExhaustiveDependencies: `asked` counts up to ask again
  useEffect(() => {
    if (question === null || !waiting) return;
    let stop = () => {};
    const timer = setTimeout(() => {
      stop = begin(question);
    }, pauseMs);
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [question, waiting, asked]);
  return fresh;
}

/** Starts the work behind a question; the returned function drops it at once. */
function beginWork<T>(photo: Photo, question: string, asking: Asking<T>): () => void {
  let job: RunningJob<T> | null = null;
  let dropped = false;
  const leaveBar = () =>
    useWorkbench.setState(({ running }) =>
      running?.question === question ? { running: null } : {},
    );
  const stop = () => {
    dropped = true;
    job?.cancel();
    leaveBar();
  };
  const cancel = () => {
    cancelled.add(question);
    stop();
    useWorkbench.setState(({ asked }) => ({ asked: asked + 1 }));
  };
  const show = (fraction: number, doing: string) => {
    if (dropped) return;
    useWorkbench.setState({
      running: { question, label: asking.label, doing, fraction, cancel },
    });
  };
  const work = async () => {
    show(0, 'squaring the panel up');
    try {
      const { panel } = await panelOf(photo);
      if (dropped) return;
      job = asking.start(panel, show);
      // A job that is dropped rejects; nobody may be waiting any more.
      const result = await job.result;
      if (!dropped) asking.keep(photo.id, { question, result });
    } catch (thrown) {
      if (dropped) return;
      cancelled.add(question);
      tellProblem(thrown, asking.label);
      useWorkbench.setState(({ asked }) => ({ asked: asked + 1 }));
    }
    leaveBar();
  };
  work();
  return stop;
}
