import type { LineMm } from '../results/scoreResult.js';
import type { SeamFrame } from './seamFrame.js';

/** How far the wood goes on either side of a seam, mm. */
export interface SeamReach {
  readonly aMm: number;
  readonly bMm: number;
}

/** A seam meeting this one at a slope above 30 deg (cosine) ends on it and is no boundary. */
const parallelCos = 0.87;

/**
 * How far each board goes from a seam before the panel's edge or the next joint running the same
 * way, looked up at nine places along it; the nearest counts.
 */
export function seamReach(
  frame: SeamFrame,
  others: readonly LineMm[],
  widthMm: number,
  heightMm: number,
): SeamReach {
  const walls = [...others.filter((line) => runsAlong(frame, line)), ...edges(widthMm, heightMm)];
  const reach = { a: Number.POSITIVE_INFINITY, b: Number.POSITIVE_INFINITY };
  for (let k = 0; k < 9; k++) {
    const xi = frame.lengthMm * (0.04 + (0.92 * k) / 8);
    const x = frame.originXMm + xi * frame.ex;
    const y = frame.originYMm + xi * frame.ey;
    for (const wall of walls) {
      const eta = crossing(x, y, frame, wall);
      if (eta === null) continue;
      if (eta > 0) reach.b = Math.min(reach.b, eta);
      else reach.a = Math.min(reach.a, -eta);
    }
  }
  const finite = (mm: number) => (Number.isFinite(mm) ? mm : 0);
  return { aMm: finite(reach.a), bMm: finite(reach.b) };
}

function runsAlong(frame: SeamFrame, line: LineMm): boolean {
  const dx = line.x2Mm - line.x1Mm;
  const dy = line.y2Mm - line.y1Mm;
  const along = Math.abs(dx * frame.ex + dy * frame.ey);
  return along > parallelCos * Math.hypot(dx, dy);
}

function edges(w: number, h: number): LineMm[] {
  return [
    { x1Mm: 0, y1Mm: 0, x2Mm: w, y2Mm: 0 },
    { x1Mm: w, y1Mm: 0, x2Mm: w, y2Mm: h },
    { x1Mm: w, y1Mm: h, x2Mm: 0, y2Mm: h },
    { x1Mm: 0, y1Mm: h, x2Mm: 0, y2Mm: 0 },
  ];
}

/** Where the normal through (x, y) meets a wall, mm along the normal; null when it misses. */
function crossing(x: number, y: number, frame: SeamFrame, wall: LineMm): number | null {
  const dx = wall.x2Mm - wall.x1Mm;
  const dy = wall.y2Mm - wall.y1Mm;
  const det = dx * frame.ny - dy * frame.nx;
  if (Math.abs(det) < 1e-9) return null;
  const [px, py] = [x - wall.x1Mm, y - wall.y1Mm];
  const t = (px * frame.ny - py * frame.nx) / det;
  if (t < -1e-6 || t > 1 + 1e-6) return null;
  const eta = (px * dy - py * dx) / det;
  return Math.abs(eta) < 1e-6 ? null : eta;
}
