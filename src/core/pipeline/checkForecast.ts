import { SeamgrainError } from '../errors.js';
import { ripLossMm } from '../rip/frontCut.js';
import { leastEdgeMm } from '../rip/ripCurve.js';
import { lengthWords } from '../units/lengthWords.js';
import type { ForecastOptions } from './forecastOptions.js';

/**
 * Refuses questions that no panel of this size can answer.
 *
 * @throws SeamgrainError `badPanel` for a rip that leaves no wood on one side, `wrongUsage` for a
 *   kerf or a dressing that is none.
 */
export function checkForecast(
  panel: { readonly widthMm: number; readonly heightMm: number },
  options: ForecastOptions,
): void {
  const { kerfMm, dressMm, ripsMm } = options;
  if (!(kerfMm > 0) || !(dressMm >= 0)) {
    throw new SeamgrainError(
      'wrongUsage',
      `A kerf of ${lengthWords(kerfMm)} and a dressing of ${lengthWords(dressMm)} cannot be forecast.`,
      'Give a kerf above zero and a dressing of zero or more.',
    );
  }
  const lossMm = ripLossMm(options);
  const leastMm = leastEdgeMm + lossMm / 2;
  const sorted = [...ripsMm].sort((a, b) => a - b);
  for (const [i, yMm] of sorted.entries()) {
    if (!(yMm >= leastMm && yMm <= panel.heightMm - leastMm)) {
      throw new SeamgrainError(
        'badPanel',
        `A rip ${lengthWords(yMm)} from the top leaves no wood to read on one side.`,
        `The panel is ${lengthWords(panel.heightMm)} wide; ask between ${lengthWords(leastMm)} and ${lengthWords(panel.heightMm - leastMm)}.`,
      );
    }
    if (i > 0 && yMm - sorted[i - 1] < lossMm + leastEdgeMm) {
      throw new SeamgrainError(
        'badPanel',
        `The rips ${lengthWords(sorted[i - 1])} and ${lengthWords(yMm)} from the top leave no strip between them.`,
        `Each takes ${lengthWords(lossMm)}; ask for rips at least ${lengthWords(lossMm + leastEdgeMm)} apart.`,
      );
    }
  }
}
