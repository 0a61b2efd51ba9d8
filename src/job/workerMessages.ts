import type { ErrorCode } from '../core/errors.js';
import type { JobInput, JobName, JobOutput } from './jobMap.js';

/** Page to worker: do this job. */
export type JobRequest<N extends JobName = JobName> = {
  [K in N]: { readonly id: number; readonly job: K; readonly input: JobInput<K> };
}[N];

/** A failure as it crosses the thread boundary. */
export interface JobFailure {
  readonly code: ErrorCode;
  readonly message: string;
  readonly hint: string;
  /** For the console only, never for the user. */
  readonly stack: string;
}

/** Worker to page: how far, or how it ended. */
export type JobReply =
  | {
      readonly id: number;
      readonly kind: 'progress';
      readonly fraction: number;
      readonly what: string;
    }
  | { readonly id: number; readonly kind: 'done'; readonly output: JobOutput<JobName> }
  | { readonly id: number; readonly kind: 'failed'; readonly error: JobFailure };
