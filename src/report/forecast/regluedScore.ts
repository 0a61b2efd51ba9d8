import type { ForecastResult } from '../../core/results/forecastResult.js';
import type { ScoreResult } from '../../core/results/scoreResult.js';
import { wordOfV } from './wordOfV.js';

/** The panel glued up again as a score would give it, for the score's picture and words. */
export function regluedScore(result: ForecastResult): ScoreResult | null {
  const { reglued, panel } = result;
  if (!reglued) return null;
  const { widthMm, heightMm, seams } = reglued;
  const told = seams.map(({ visibility }) => visibility.v).filter((v) => v !== null);
  const v = told.length > 0 ? Math.max(...told) : null;
  return {
    schema: 'seamgrain/score@1',
    panel: { widthMm, heightMm, pxPerMm: panel.pxPerMm },
    // Neither found nor placed by hand: drawn as found, without the mark of the hand.
    seams: seams.map((seam) => ({ ...seam, found: 'photo' })),
    visibility: { v, word: wordOfV(v) },
    notes: [],
  };
}
