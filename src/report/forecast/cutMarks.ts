import type { ForecastResult } from '../../core/results/forecastResult.js';
import { px } from '../draw/px.js';
import type { ScoreFrame } from '../score/scoreFrame.js';
import { ripsApart } from './uncutSeams.js';

/** The wood that the cuts would take, drawn on the uncut panel: a light band per cut. */
export function cutMarks(result: ForecastResult, { panel, scale }: ScoreFrame): string {
  const { lossMm, kerfMm, placements } = result;
  const band = (xMm: number, yMm: number, widthMm: number, heightMm: number) =>
    `<rect x="${px(panel.x + xMm * scale)}" y="${px(panel.y + yMm * scale)}" width="${px(widthMm * scale)}" height="${px(Math.max(1 / scale, heightMm) * scale)}"/>`;
  const wide = result.panel.widthMm;
  const [best] = placements;
  const bands = ripsApart(result).map(({ yMm }) => band(0, yMm - lossMm / 2, wide, lossMm));
  if (best) {
    const { xMm, yMm, widthMm, heightMm } = best;
    bands.push(
      band(0, yMm - lossMm, wide, lossMm),
      band(0, yMm + heightMm, wide, lossMm),
      band(xMm - kerfMm, yMm, kerfMm, heightMm),
      band(xMm + widthMm, yMm, kerfMm, heightMm),
    );
  }
  return `<g fill="#ffffff" fill-opacity="0.72" stroke="#161616" stroke-width="0.8">${bands.join('')}</g>`;
}
