import type { Progress } from '../core/progress.js';
import type { OpenCvSource } from '../vision/openCv.js';
import type { JobInput, JobName, JobOutput } from './jobMap.js';
import { jobTable } from './jobTable.js';

/** What the caller of a job provides. */
export interface RunJobOptions {
  /** Loads OpenCV: `loadOpenCv` of src/vision/node in Node, the worker's own in a browser. */
  readonly vision: OpenCvSource;
  readonly progress?: Progress;
}

/**
 * Does one job in this thread.
 * @param name which job
 * @param input what it works on; not changed
 * @returns the job's answer
 * @throws SeamgrainError in the user's words for everything a user can cause
 */
export async function runJob<N extends JobName>(
  name: N,
  input: JobInput<N>,
  { vision, progress = () => {} }: RunJobOptions,
): Promise<JobOutput<N>> {
  return jobTable[name].run(input, { vision, progress });
}
