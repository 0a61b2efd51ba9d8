import type { PanelPhoto } from '../image/panelPhoto.js';
import type { Progress } from '../progress.js';
import type { ComparedCandidate, CompareResult } from '../results/compareResult.js';
import type { ForecastResult } from '../results/forecastResult.js';
import { defaultForecastOptions } from './forecastOptions.js';
import { forecastPanel } from './forecastPanel.js';

/** What the candidates are to be cut with and seen from. */
export interface CompareOptions {
  readonly distanceMm: number;
  readonly kerfMm: number;
  readonly dressMm: number;
}

/** A panel or board that might be used, and what the user calls its photo. */
export interface Candidate {
  readonly photo: PanelPhoto;
  readonly name: string;
}

/**
 * Ranks candidate panels for ripping a front out of them: by the median forecast visibility of a
 * rip over their width (where the front sits is not always free), ties by the best place.
 *
 * @throws SeamgrainError where a photo cannot be forecast.
 */
export function comparePanels(
  candidates: readonly Candidate[],
  options: CompareOptions,
  progress?: Progress,
): CompareResult {
  const judged = candidates.map(({ photo, name }, k) => {
    progress?.(k / candidates.length, `forecasting ${name}`);
    const forecast = forecastPanel(photo, { ...defaultForecastOptions, ...options });
    return judge(name, photo, forecast);
  });
  progress?.(1, 'done');
  const worth = (v: number | null) => v ?? Number.POSITIVE_INFINITY;
  const ranked = [...judged].sort(
    (a, b) => worth(a.vMedian) - worth(b.vMedian) || worth(a.vBest) - worth(b.vBest),
  );
  return {
    schema: 'seamgrain/compare@1',
    candidates: ranked.map((candidate, k) => ({ ...candidate, rank: k + 1 })),
  };
}

function judge(name: string, photo: PanelPhoto, forecast: ForecastResult): ComparedCandidate {
  const told = forecast.curve.filter((point) => point.v !== null);
  const vs = told.map((point) => point.v ?? 0).sort((a, b) => a - b);
  const best = told.reduce<(typeof told)[number] | null>(
    (a, b) => (a === null || (b.v ?? 0) < (a.v ?? 0) ? b : a),
    null,
  );
  return {
    photo: name,
    rank: 0,
    vMedian: vs.length > 0 ? (vs[(vs.length - 1) >> 1] + vs[vs.length >> 1]) / 2 : null,
    vBest: best?.v ?? null,
    bestYMm: best?.yMm ?? null,
    cut: null,
    gapMm: null,
    notes: [
      ...photo.notes,
      'How it is sawn cannot be told from the face alone; photograph the end grain.',
      'The seasonal gap needs a species; ask for it with the gap verb.',
      ...(vs.length === 0 ? ['No rip could be forecast: no grain is seen.'] : []),
    ],
  };
}
