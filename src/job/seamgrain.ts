/**
 * The library's door. In Node, hand `loadOpenCv` of 'seamgrain/node' to `runJob`; a browser's
 * worker calls `hostJobs` and the page `createJobClient`.
 */
export { SeamgrainError } from '../core/errors.js';
export type { PanelPhoto } from '../core/image/panelPhoto.js';
export type { CornersPx, PhotoScale } from '../core/image/photoScale.js';
export type { RgbImage } from '../core/image/rgbImage.js';
export { defaultForecastOptions, type ForecastOptions } from '../core/pipeline/forecastOptions.js';
export { defaultScoreOptions, type ScoreOptions } from '../core/pipeline/scoreOptions.js';
export type { Progress } from '../core/progress.js';
export type { FaceRings } from '../core/results/faceRings.js';
export type { ForecastResult } from '../core/results/forecastResult.js';
export type { GrainResult } from '../core/results/grainResult.js';
export type { ScoreResult } from '../core/results/scoreResult.js';
export { reglueOfForecast } from '../core/rip/reglueOfForecast.js';
export type { JobInput, JobMap, JobName, JobOutput } from './jobMap.js';
export { runJob } from './runJob.js';
export { createJobClient, type JobClient, type RunningJob } from './webWorkerClient.js';
export { hostJobs } from './webWorkerHost.js';
