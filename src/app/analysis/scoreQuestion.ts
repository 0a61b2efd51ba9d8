import { defaultScoreOptions, type ScoreOptions } from '../../core/pipeline/scoreOptions.js';
import { ellipseOutline } from '../geometry/ellipseOutline.js';
import type { Photo, Settings } from '../state/project.js';

/** What a maker may have marked on a panel. */
export type Marked = Pick<Photo, 'findSeams' | 'seams' | 'leftOut'>;

/** What the score job is asked for a photo: the maker's marks and the bench's numbers. */
export function scoreQuestion(photo: Marked, settings: Settings): ScoreOptions {
  return {
    ...defaultScoreOptions,
    distanceMm: settings.distanceMm,
    kerfMm: settings.kerfMm,
    find: photo.findSeams,
    placedSeams: photo.seams.map(({ line }) => line),
    leftOut: photo.leftOut.map(({ xMm, yMm, radiusXMm, radiusYMm }) =>
      ellipseOutline(xMm, yMm, radiusXMm, radiusYMm),
    ),
  };
}
