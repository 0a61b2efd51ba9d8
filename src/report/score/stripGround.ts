import { paint } from '../draw/paint.js';
import { px } from '../draw/px.js';
import type { Theme } from '../draw/theme.js';

/**
 * The lines that a strip is read by: its foot and the edges of the five steps but V = 1
 * (`justVisibleLine`). Along +x from 0, growing towards negative y.
 * @param steps how many steps of the scale it is high
 */
export function stripGround(lengthPx: number, steps: number, stepPx: number, theme: Theme): string {
  const line = (step: number, dress: string) =>
    `<path d="M0 ${px(-step * stepPx)}h${px(lengthPx)}" fill="none" ${dress}/>`;
  const faint = `${paint(theme, 'stroke', 'rule')} stroke-width="0.7"`;
  const plain = `${paint(theme, 'stroke', 'quiet')} stroke-width="1"`;
  return [
    ...[1, 3, 4].filter((step) => step <= steps).map((step) => line(step, faint)),
    line(0, plain),
  ].join('');
}
