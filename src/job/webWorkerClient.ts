import type { Progress } from '../core/progress.js';
import { fromJobFailure } from './jobFailure.js';
import type { JobInput, JobName, JobOutput } from './jobMap.js';
import type { JobReply, JobRequest } from './workerMessages.js';

/** The page's side of the wire: a Worker, or anything that behaves like one. */
export interface WorkerLike {
  postMessage(message: unknown, transfer: ArrayBuffer[]): void;
  addEventListener(type: 'message', listener: (event: { data: unknown }) => void): void;
  addEventListener(type: 'error', listener: (event: { message?: string }) => void): void;
  terminate(): void;
}

/** Why a job's promise was rejected when its caller no longer wants the answer. */
export class JobCancelled extends Error {
  override readonly name = 'JobCancelled';
}

/** A job under way. */
export interface RunningJob<Output> {
  /** The answer; rejected with a SeamgrainError, or with JobCancelled. */
  readonly result: Promise<Output>;
  /** Stops the work at once; the worker is ended and a fresh one serves the next job. */
  cancel(): void;
}

/** Sends jobs to a worker, one at a time in the order asked. */
export interface JobClient {
  start<N extends JobName>(
    name: N,
    input: JobInput<N>,
    options?: { readonly progress?: Progress; readonly moves?: readonly ArrayBuffer[] },
  ): RunningJob<JobOutput<N>>;
  /** Cancels everything and ends the worker. */
  close(): void;
}

interface Waiting {
  readonly request: JobRequest;
  readonly moves: readonly ArrayBuffer[];
  readonly progress: Progress;
  readonly resolve: (output: unknown) => void;
  readonly reject: (reason: Error) => void;
}

/**
 * Makes the page's door to the jobs. The worker is started with the first job.
 * @param makeWorker starts a worker whose module calls `hostJobs`
 */
export function createJobClient(makeWorker: () => WorkerLike): JobClient {
  const queue: Waiting[] = [];
  let worker: WorkerLike | null = null;
  let nextId = 1;

  const sendFirst = () => {
    const first = queue[0];
    if (!first) return;
    worker ??= listenTo(makeWorker());
    worker.postMessage(first.request, [...first.moves]);
  };
  const endWorker = () => {
    worker?.terminate();
    worker = null;
  };
  const finish = (settle: (job: Waiting) => void) => {
    const job = queue.shift();
    if (job) settle(job);
    sendFirst();
  };
  const receive = (reply: JobReply) => {
    const first = queue[0];
    if (first?.request.id !== reply.id) return;
    if (reply.kind === 'progress') first.progress(reply.fraction, reply.what);
    else if (reply.kind === 'done') finish((job) => job.resolve(reply.output));
    else finish((job) => job.reject(fromJobFailure(reply.error)));
  };
  const listenTo = (fresh: WorkerLike): WorkerLike => {
    fresh.addEventListener('message', ({ data }) => {
      if (fresh === worker) receive(data as JobReply);
    });
    fresh.addEventListener('error', ({ message }) => {
      if (fresh !== worker) return;
      endWorker();
      const failure = { code: 'internal', message: message ?? 'The worker stopped.' } as const;
      finish((job) => job.reject(fromJobFailure({ ...failure, hint: '', stack: '' })));
    });
    return fresh;
  };
  const drop = (job: Waiting) => {
    const place = queue.indexOf(job);
    if (place < 0) return;
    queue.splice(place, 1);
    job.reject(new JobCancelled(`The job '${job.request.job}' was cancelled.`));
    if (place > 0) return;
    endWorker();
    sendFirst();
  };

  return {
    start(name, input, { progress = () => {}, moves = [] } = {}) {
      const request = { id: nextId++, job: name, input } as unknown as JobRequest;
      let job: Waiting | null = null;
      const result = new Promise<JobOutput<typeof name>>((resolve, reject) => {
        job = { request, moves, progress, reject, resolve: resolve as (output: unknown) => void };
        queue.push(job);
        if (queue.length === 1) sendFirst();
      });
      return { result, cancel: () => job && drop(job) };
    },
    close() {
      for (const job of [...queue].reverse()) drop(job);
      endWorker();
    },
  };
}
