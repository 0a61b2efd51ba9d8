import type { ForecastResult, ForecastRip } from '../../core/results/forecastResult.js';
import type { SeamResult } from '../../core/results/scoreResult.js';
import { untoldSeam } from '../../core/results/untoldSeam.js';
import type { VisibilityResult } from '../../core/results/visibilityResult.js';
import { probabilitySeen } from '../../core/visibility/probabilitySeen.js';
import { wordOfV } from './wordOfV.js';

/** Rips that are not the front's own, which lie where its rails are cut off, or nearly. */
export function ripsApart({ rips, placements, lossMm }: ForecastResult): ForecastRip[] {
  const [best] = placements;
  if (!best) return [...rips];
  const own = [best.yMm - lossMm / 2, best.yMm + best.heightMm + lossMm / 2];
  return rips.filter(({ yMm }) => own.every((y) => Math.abs(y - yMm) > 3 * lossMm));
}

/** The joints that the asked rips and the best placement would make, where they lie on the uncut panel. */
export function uncutSeams(result: ForecastResult): SeamResult[] {
  const { placements, panel } = result;
  const ofRips = ripsApart(result).map(({ yMm, visibility, windows }, i) => ({
    ...untoldSeam,
    notes: [],

    id: `rip ${i + 1}`,
    line: { x1Mm: 0, y1Mm: yMm, x2Mm: panel.widthMm, y2Mm: yMm },
    visibility,
    windows,
  }));
  const ofFront = (placements[0]?.segments ?? [])
    .filter(({ piece, edge }) => piece !== 'front' || edge === 'upper' || edge === 'lower')
    .map(({ piece, edge, line, v, cue }) => ({
      ...untoldSeam,
      notes: [],

      id: `${piece}, ${edge} edge`,
      line,
      visibility: visibilityOf(v, cue),
      windows: [],
    }));
  return [...ofRips, ...ofFront];
}

function visibilityOf(v: number | null, cue: VisibilityResult['cue']): VisibilityResult {
  const pSeen = v === null ? null : probabilitySeen(v);
  return { v, pSeen, vanishesAtMm: null, cue, word: wordOfV(v) };
}
