import { createJobClient, type WorkerLike } from '../../job/webWorkerClient.js';
import JobWorker from './jobWorker.js?worker';

/** The page's one door to the jobs. */
export const jobs = createJobClient(() => new JobWorker() as unknown as WorkerLike);
