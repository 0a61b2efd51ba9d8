import { noRules } from '../core/board/arrange/arrangeRules.js';
import type { JobContext } from './jobContext.js';
import type { JobInput, JobName, JobOutput } from './jobMap.js';

/** How one job is done and which buffers of its output travel without a copy. */
interface Job<N extends JobName> {
  readonly run: (input: JobInput<N>, context: JobContext) => Promise<JobOutput<N>>;
  readonly moves?: (output: JobOutput<N>) => readonly ArrayBufferLike[];
}

/**
 * Each job beside the code that does it, which is loaded when the job is first asked for: starting
 * up must not wait for the other jobs' code.
 */
export const jobTable: { readonly [N in JobName]: Job<N> } = {
  rectify: {
    run: async ({ photo, scale, maxPxPerMm }, { vision, progress }) => {
      const { rectify } = await import('../vision/rectify.js');
      return rectify(photo, scale, { vision, progress, ...(maxPxPerMm ? { maxPxPerMm } : {}) });
    },
    moves: (panel) => [panel.image.data.buffer],
  },
  outline: {
    run: async ({ photo }, { vision }) => {
      const { guessPanelCorners } = await import('../vision/outline/guessPanelCorners.js');
      return guessPanelCorners((await vision()).cv, photo);
    },
  },
  score: {
    run: async ({ photo, options }, { progress }) => {
      const { scorePanel } = await import('../core/pipeline/scorePanel.js');
      return scorePanel(photo, options, progress);
    },
  },
  grain: {
    run: async ({ photo, options }, { progress }) => {
      const { grainPanel } = await import('../core/pipeline/grainPanel.js');
      return grainPanel(photo, options, progress);
    },
  },
  faceRings: {
    run: async ({ photo }, { progress }) => {
      const { logLuminancePlane } = await import('../core/colour/logLuminancePlane.js');
      const { forecastFaceRings } = await import('../core/pipeline/forecastFaceRings.js');
      progress(0.1, 'looking how the rings stand');
      const { pxPerMm } = photo;
      return forecastFaceRings({ logLuminance: logLuminancePlane(photo.image), pxPerMm });
    },
  },
  forecast: {
    run: async ({ photo, options }, { progress }) => {
      const { forecastPanel } = await import('../core/pipeline/forecastPanel.js');
      return forecastPanel(photo, options, progress);
    },
  },
  reglue: {
    run: async ({ photo, spec }) => {
      const { reglue } = await import('../core/rip/reglue.js');
      return reglue(photo.image, photo.pxPerMm, spec);
    },
    moves: (image) => [image.data.buffer],
  },
  imagine: {
    run: async ({ wood, ...size }) => {
      const { imagineFace } = await import('../core/pipeline/imagineFace.js');
      return imagineFace(wood, size);
    },
    moves: (panel) => [panel.image.data.buffer],
  },
  arrange: {
    run: async ({ boards, options, rules = noRules }, { progress }) => {
      const { arrangePanel } = await import('../core/pipeline/arrangePanel.js');
      return arrangePanel(boards, options, rules, progress);
    },
  },
  compare: {
    run: async ({ candidates, options }, { progress }) => {
      const { comparePanels } = await import('../core/pipeline/comparePanels.js');
      return comparePanels(candidates, options, progress);
    },
  },
  endgrain: {
    run: async ({ photo, options }, { progress }) => {
      const { endgrainPanel } = await import('../core/pipeline/endgrainPanel.js');
      return endgrainPanel(photo, options, progress);
    },
  },
};
