import type { ForecastCurvePoint } from '../../core/results/forecastResult.js';
import { paint } from '../draw/paint.js';
import { px } from '../draw/px.js';
import type { Theme } from '../draw/theme.js';
import { stepsOfV } from '../score/stepsOfV.js';

/** V by angle as a thin line over the rail's hill: down the panel, growing to the right. */
export function byAngleLine(
  curve: readonly ForecastCurvePoint[],
  at: { readonly x: number; readonly y: number; readonly scale: number; readonly stepPx: number },
  theme: Theme,
): string {
  let d = '';
  let pen = 'M';
  for (const { yMm, vByAngle } of curve) {
    if (vByAngle === null) {
      pen = 'M';
      continue;
    }
    d += `${pen}${px(at.x + at.stepPx * stepsOfV(vByAngle))} ${px(at.y + yMm * at.scale)}`;
    pen = 'L';
  }
  const dress = `${paint(theme, 'stroke', 'ink')} stroke-width="1" stroke-linejoin="round"`;
  return d ? `<path d="${d}" fill="none" ${dress}/>` : '';
}
