import type { PanelPhoto } from '../image/panelPhoto.js';
import type { ForecastResult } from '../results/forecastResult.js';
import { ripLossMm } from '../rip/frontCut.js';
import type { ForecastOptions } from './forecastOptions.js';

const nothing = { v: null, pSeen: null, vanishesAtMm: null, cue: null, word: null } as const;

/**
 * The forecast from a photo that shows no grain: nothing is told, never 'disappears'.
 *
 * @param notes why.
 */
export function forecastUntold(
  photo: PanelPhoto,
  options: ForecastOptions,
  notes: readonly string[],
): ForecastResult {
  const { distanceMm, kerfMm, dressMm, spareMm, revealMm } = options;
  return {
    schema: 'seamgrain/forecast@1',
    panel: { widthMm: photo.widthMm, heightMm: photo.heightMm, pxPerMm: photo.pxPerMm },
    ...{ kerfMm, dressMm, lossMm: ripLossMm(options), distanceMm, spareMm, revealMm },
    ...{ curve: [], disagreements: [], placements: [], search: null, reglued: null },
    ...{ depth: null, imagined: [], leftOut: options.leftOut },
    summary: { vMedian: null, vBest: null, bestYMm: null, disappears: null },
    rips: options.ripsMm.map((yMm) => ({
      ...{ yMm, visibility: nothing, vByAngle: null, bestSlideMm: null, vAtBestSlide: null },
      ...{ slidesByAngleMm: [], windows: [], notes: ['Almost no grain lines show in the photo.'] },
    })),
    notes,
  };
}
