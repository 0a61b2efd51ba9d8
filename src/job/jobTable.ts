import { noRules } from '../core/board/arrange/arrangeRules.js';
import { arrangePanel } from '../core/pipeline/arrangePanel.js';
import { comparePanels } from '../core/pipeline/comparePanels.js';
import { endgrainPanel } from '../core/pipeline/endgrainPanel.js';
import { forecastPanel } from '../core/pipeline/forecastPanel.js';
import { grainPanel } from '../core/pipeline/grainPanel.js';
import { imagineFace } from '../core/pipeline/imagineFace.js';
import { scorePanel } from '../core/pipeline/scorePanel.js';
import { reglue } from '../core/rip/reglue.js';
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
  forecast: {
    run: ({ photo, options }, { progress }) => forecastPanel(photo, options, progress),
  },
  reglue: {
    run: ({ photo, spec }) => reglue(photo.image, photo.pxPerMm, spec),
    moves: (image) => [image.data.buffer],
  },
  imagine: {
    run: ({ wood, ...size }) => imagineFace(wood, size),
    moves: (panel) => [panel.image.data.buffer],
  },
  arrange: {
    run: ({ boards, options, rules = noRules }, { progress }) =>
      arrangePanel(boards, options, rules, progress),
  },
  compare: {
    run: ({ candidates, options }, { progress }) => comparePanels(candidates, options, progress),
  },
  endgrain: {
    run: ({ photo, options }, { progress }) => endgrainPanel(photo, options, progress),
  },
};
