import { paint } from '../draw/paint.js';
import { px } from '../draw/px.js';
import type { Theme } from '../draw/theme.js';

/** The dashed line of V = 1 in a strip, drawn over its hill; placed as `stripGround`. */
export function justVisibleLine(lengthPx: number, stepPx: number, theme: Theme): string {
  const dress = `${paint(theme, 'stroke', 'ink')} stroke-width="1" stroke-dasharray="5 3"`;
  return `<path d="M0 ${px(-2 * stepPx)}h${px(lengthPx)}" fill="none" ${dress}/>`;
}
