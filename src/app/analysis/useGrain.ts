import type { GrainResult } from '../../core/results/grainResult.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import { useAnswer } from './useAnswer.js';

const cellMm = 10;

/** The grain strokes' cells, asked for once the more important answer is there (`when`). */
export function useGrain(photo: Photo, when: boolean): GrainResult | null {
  const have = useWorkbench(({ grains }) => grains[photo.id]);
  const fresh = useAnswer<GrainResult>(when ? photo : null, {
    question: { cellMm },
    label: 'Grain strokes',
    start: (panel, progress) =>
      jobs.start('grain', { photo: panel, options: { cellMm } }, { progress }),
    keep: (photoId, answer) =>
      useWorkbench.setState(({ grains }) => ({ grains: { ...grains, [photoId]: answer } })),
    have,
  });
  return fresh && have ? have.result : null;
}
