import { levelPath } from '../draw/levelPath.js';
import { px } from '../draw/px.js';
import type { VisibilityLevel } from '../ramp/visibilityRamp.js';

/**
 * A short sample of a level's band, for headings and the legend.
 * @param level null draws what cannot be told
 * @param bandPx thickness of the loudest level, px
 */
export function levelSwatch(
  level: VisibilityLevel | null,
  x: number,
  baselineY: number,
  widthPx: number,
  bandPx: number,
  hatchId: string,
): string {
  const thickPx = bandPx * (level?.thickness ?? 0.6);
  const path = levelPath(level?.shape ?? 'solid', 0, widthPx, thickPx);
  const fill = level?.colour ?? `url(#${hatchId})`;
  const y = baselineY - (bandPx - thickPx) / 2;
  return `<path transform="translate(${px(x)} ${px(y)})" d="${path}" fill="${fill}" stroke="#161616" stroke-width="0.9" stroke-linejoin="round"/>`;
}
