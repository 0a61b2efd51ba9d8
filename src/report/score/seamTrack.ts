import type { LineMm } from '../../core/results/scoreResult.js';
import { px } from '../draw/px.js';
import type { ScoreFrame } from './scoreFrame.js';

/** A seam on the page, with a side on which its band runs. */
export interface SeamTrack {
  readonly x: number;
  readonly y: number;
  readonly angleRad: number;
  readonly lengthPx: number;
  /** Unit vector from the seam towards its band. */
  readonly outX: number;
  readonly outY: number;
  /** Puts a drawing made along +x, growing towards negative y, beside the seam on that side. */
  readonly transform: string;
}

/**
 * Places a seam on the page. The band runs above a joint and right of a crosscut, or on the other
 * side where the panel's edge leaves no room.
 */
export function seamTrack(line: LineMm, { panel, scale, bandPx, gapPx }: ScoreFrame): SeamTrack {
  const x = panel.x + line.x1Mm * scale;
  const y = panel.y + line.y1Mm * scale;
  const [dx, dy] = [(line.x2Mm - line.x1Mm) * scale, (line.y2Mm - line.y1Mm) * scale];
  const angleRad = Math.atan2(dy, dx);
  const lengthPx = Math.hypot(dx, dy);
  // The normal that points up, or right for a crosscut.
  const along = Math.abs(dx) >= Math.abs(dy);
  const flip = along ? Math.cos(angleRad) < 0 : Math.sin(angleRad) < 0;
  const reach = gapPx + bandPx + 2;
  const roomPx = along
    ? Math.min(y, y + dy) - panel.y
    : panel.x + panel.width - Math.max(x, x + dx);
  const sign = (roomPx < reach ? -1 : 1) * (flip ? -1 : 1);
  const degrees = px((angleRad * 180) / Math.PI);
  return {
    x,
    y,
    angleRad,
    lengthPx,
    outX: sign * Math.sin(angleRad),
    outY: -sign * Math.cos(angleRad),
    transform: `translate(${px(x)} ${px(y)}) rotate(${degrees}) scale(1 ${sign}) translate(0 ${px(-gapPx)})`,
  };
}
