import type { ForecastResult } from '../../core/results/forecastResult.js';
import { px } from '../draw/px.js';
import type { ScoreFrame } from '../score/scoreFrame.js';

/** Areas that were left out, outlined and crossed out on the uncut panel. */
export function leftOutMarks({ leftOut }: ForecastResult, { panel, scale }: ScoreFrame): string {
  if (leftOut.length === 0) return '';
  const marks = leftOut.map((outline) => {
    const at = outline.map(([xMm, yMm]) => [
      within(panel.x + xMm * scale, panel.x, panel.width),
      within(panel.y + yMm * scale, panel.y, panel.height),
    ]);
    const [xs, ys] = [at.map(([x]) => x), at.map(([, y]) => y)];
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
    const side = `M${at.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')}Z`;
    const cross = `M${px(left)} ${px(top)}L${px(right)} ${px(bottom)}M${px(right)} ${px(top)}L${px(left)} ${px(bottom)}`;
    return `<path d="${side}${cross}"/>`;
  });
  const all = marks.join('');
  // A pale line under a dark one is seen on any wood.
  return `<g fill="none" stroke="#ffffff" stroke-width="3.4">${all}</g><g fill="none" stroke="#161616" stroke-width="1.4">${all}</g>`;
}

const within = (at: number, from: number, size: number) =>
  Math.min(from + size, Math.max(from, at));
