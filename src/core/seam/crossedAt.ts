import type { LineMm } from '../results/scoreResult.js';
import type { SeamFrame } from './seamFrame.js';

/** A line that stops this short of the seam still ends on it, mm. */
const nearMm = 4;

/**
 * Where another joint crosses a seam or ends on it, mm along the seam; null when it runs alongside
 * or stays clear.
 */
export function crossedAt(frame: SeamFrame, line: LineMm): number | null {
  const from = inFrame(frame, line.x1Mm, line.y1Mm);
  const to = inFrame(frame, line.x2Mm, line.y2Mm);
  const rise = to.eta - from.eta;
  if (Math.abs(rise) < Math.abs(to.xi - from.xi)) return null;
  const t = -from.eta / rise;
  const beyondMm = Math.max(-t, t - 1) * Math.abs(rise);
  const xi = from.xi + t * (to.xi - from.xi);
  const clear = beyondMm > nearMm || xi < -nearMm || xi > frame.lengthMm + nearMm;
  return clear ? null : xi;
}

function inFrame(frame: SeamFrame, xMm: number, yMm: number): { xi: number; eta: number } {
  const [dx, dy] = [xMm - frame.originXMm, yMm - frame.originYMm];
  return { xi: dx * frame.ex + dy * frame.ey, eta: dx * frame.nx + dy * frame.ny };
}
