import type { OpenCvSource } from '../vision/openCv.js';
import { toJobFailure } from './jobFailure.js';
import { jobTable } from './jobTable.js';
import { runJob } from './runJob.js';
import type { JobReply, JobRequest } from './workerMessages.js';

/** The worker's side of the wire: `self` in a web worker, or a MessagePort. */
export interface WorkerScope {
  postMessage(message: unknown, transfer: ArrayBuffer[]): void;
  addEventListener(type: 'message', listener: (event: { data: unknown }) => void): void;
}

/**
 * Lets a worker answer jobs. Call it once, at the top of the worker's module.
 * @param scope `self` of the worker
 * @param vision loads OpenCV inside the worker
 */
export function hostJobs(scope: WorkerScope, vision: OpenCvSource): void {
  const send = (reply: JobReply, moves: readonly ArrayBufferLike[] = []) =>
    scope.postMessage(
      reply,
      moves.filter((buffer): buffer is ArrayBuffer => buffer instanceof ArrayBuffer),
    );
  scope.addEventListener('message', async ({ data }) => {
    const { id, job, input } = data as JobRequest;
    try {
      const output = await runJob(job, input, {
        vision,
        progress: (fraction, what) => send({ id, kind: 'progress', fraction, what }),
      });
      send({ id, kind: 'done', output }, movesOf(job, output));
    } catch (thrown) {
      send({ id, kind: 'failed', error: toJobFailure(thrown) });
    }
  });
}

function movesOf(job: JobRequest['job'], output: unknown): readonly ArrayBufferLike[] {
  const moves = jobTable[job].moves as
    | ((output: unknown) => readonly ArrayBufferLike[])
    | undefined;
  return moves?.(output) ?? [];
}
