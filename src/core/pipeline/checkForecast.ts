import { SeamgrainError } from '../errors.js';
import { ripLossMm } from '../rip/frontCut.js';
import { leastEdgeMm } from '../rip/ripCurve.js';
import { formatMm } from '../units/formatMm.js';
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
      `A kerf of ${formatMm(kerfMm)} and a dressing of ${formatMm(dressMm)} cannot be forecast.`,
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
        `A rip ${formatMm(yMm)} from the top leaves no wood to read on one side.`,
        `The panel is ${formatMm(panel.heightMm)} wide; ask between ${formatMm(leastMm)} and ${formatMm(panel.heightMm - leastMm)}.`,
      );
    }
    if (i > 0 && yMm - sorted[i - 1] < lossMm + leastEdgeMm) {
      throw new SeamgrainError(
        'badPanel',
        `The rips ${formatMm(sorted[i - 1])} and ${formatMm(yMm)} from the top leave no strip between them.`,
        `Each takes ${formatMm(lossMm)}; ask for rips at least ${formatMm(lossMm + leastEdgeMm)} apart.`,
      );
    }
  }
}
