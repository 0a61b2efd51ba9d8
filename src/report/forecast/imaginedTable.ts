import type { ForecastResult, ForecastSummary } from '../../core/results/forecastResult.js';
import { levelSwatchHtml } from '../html/levelSwatchHtml.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';

/** This panel and the imagined ones side by side: how their rips stand as a whole. */
export function imaginedTable({ summary, imagined }: ForecastResult): string {
  const rows: [string, ForecastSummary][] = [
    ['this panel', summary],
    ...imagined.map(
      ({ cut, ringAngleDeg, ringWidthMm, summary: of }): [string, ForecastSummary] => [
        `${cut}, rings at ${Math.round(ringAngleDeg)}° and ${ringWidthMm.toFixed(1)} mm wide`,
        of,
      ],
    ),
  ];
  const lines = rows.map(([name, { disappears, vMedian, vBest }], i) => {
    const swatch = levelSwatchHtml(levelOfVisibility(vMedian), `imagined-${i}`);
    const share = disappears === null ? null : `${Math.round(100 * disappears)} %`;
    const cells = [share, vMedian?.toFixed(2) ?? null, vBest?.toFixed(2) ?? null]
      .map((cell) => (cell === null ? '<td class="untold">cannot tell</td>' : `<td>${cell}</td>`))
      .join('');
    return `<tr><th scope="row">${swatch}${name}</th>${cells}</tr>`;
  });
  const heads = ['Rips that disappear', 'V, typical rip', 'V, best rip']
    .map((head) => `<th scope="col" style="white-space:normal">${head}</th>`)
    .join('');
  return `<div class="scroll"><table><thead><tr><td></td>${heads}</tr></thead><tbody>${lines.join('')}</tbody></table></div>`;
}
