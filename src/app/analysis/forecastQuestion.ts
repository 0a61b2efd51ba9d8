import {
  defaultForecastOptions,
  type ForecastOptions,
} from '../../core/pipeline/forecastOptions.js';
import type { Settings } from '../state/project.js';
import { type Marked, scoreQuestion } from './scoreQuestion.js';

/** What the forecast is asked for a photo: the front, the saw and the maker's marks. */
export function forecastQuestion(photo: Marked, settings: Settings): ForecastOptions {
  const { distanceMm, kerfMm, dressMm, trimMm, frontWidthMm, frontHeightMm } = settings;
  return {
    ...defaultForecastOptions,
    distanceMm,
    kerfMm,
    dressMm,
    front: { widthMm: frontWidthMm, heightMm: frontHeightMm },
    ends: settings.endPieces === 'slide' ? 'close' : 'stay',
    revealMm: trimMm || defaultForecastOptions.revealMm,
    leftOut: scoreQuestion(photo, settings).leftOut,
  };
}
