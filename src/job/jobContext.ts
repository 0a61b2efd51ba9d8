import type { Progress } from '../core/progress.js';
import type { OpenCvSource } from '../vision/openCv.js';

/** What a job may use beside its input. */
export interface JobContext {
  readonly progress: Progress;
  /** Loads OpenCV when a job needs it; most jobs never do. */
  readonly vision: OpenCvSource;
}
