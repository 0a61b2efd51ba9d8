import { grainPanel } from '../core/pipeline/grainPanel.js';
import { scorePanel } from '../core/pipeline/scorePanel.js';
import { guessPanelCorners } from '../vision/outline/guessPanelCorners.js';
import { rectify } from '../vision/rectify.js';
import type { JobContext } from './jobContext.js';
import type { JobInput, JobName, JobOutput } from './jobMap.js';

/** How one job is done and which buffers of its output travel without a copy. */
interface Job<N extends JobName> {
  readonly run: (input: JobInput<N>, context: JobContext) => JobOutput<N> | Promise<JobOutput<N>>;
  readonly moves?: (output: JobOutput<N>) => readonly ArrayBufferLike[];
}

/** Each job beside the code that does it. */
export const jobTable: { readonly [N in JobName]: Job<N> } = {
  rectify: {
    run: ({ photo, scale, maxPxPerMm }, { vision, progress }) =>
      rectify(photo, scale, { vision, progress, ...(maxPxPerMm ? { maxPxPerMm } : {}) }),
    moves: (panel) => [panel.image.data.buffer],
  },
  outline: {
    run: async ({ photo }, { vision }) => guessPanelCorners((await vision()).cv, photo),
  },
  score: {
    run: ({ photo, options }, { progress }) => scorePanel(photo, options, progress),
  },
  grain: {
    run: ({ photo, options }, { progress }) => grainPanel(photo, options, progress),
  },
};
