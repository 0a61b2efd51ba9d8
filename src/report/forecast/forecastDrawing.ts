import type { ScoreDrawing } from '../score/scoreDrawing.js';

/** How a forecast is drawn: as a score. */
export type ForecastDrawing = Pick<
  ScoreDrawing,
  'units' | 'denominator' | 'photoHref' | 'photoId' | 'widthPx' | 'theme' | 'headline' | 'idPrefix'
>;
