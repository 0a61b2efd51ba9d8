import type { LineMm } from '../results/scoreResult.js';

/**
 * A frame laid along a seam, so that every seam reads like a rip: xi runs along the seam, eta
 * across it, both in mm; side A (above, or left of a crosscut) has eta < 0, side B eta > 0.
 * Panel point = origin + xi (ex, ey) + eta (nx, ny). For a crosscut xi is +y and eta is +x, so
 * that frame is the panel mirrored at its diagonal.
 */
export interface SeamFrame {
  readonly kind: 'rip' | 'crosscut';
  readonly originXMm: number;
  readonly originYMm: number;
  readonly ex: number;
  readonly ey: number;
  readonly nx: number;
  readonly ny: number;
  readonly lengthMm: number;
}

/** Lays the frame along a line; nearer to the x axis it is a rip, nearer to the y axis a crosscut. */
export function seamFrame(line: LineMm): SeamFrame {
  let { x1Mm, y1Mm, x2Mm, y2Mm } = line;
  const kind = Math.abs(x2Mm - x1Mm) >= Math.abs(y2Mm - y1Mm) ? 'rip' : 'crosscut';
  const backward = kind === 'rip' ? x2Mm < x1Mm : y2Mm < y1Mm;
  if (backward) [x1Mm, y1Mm, x2Mm, y2Mm] = [x2Mm, y2Mm, x1Mm, y1Mm];
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  const ex = (x2Mm - x1Mm) / lengthMm;
  const ey = (y2Mm - y1Mm) / lengthMm;
  const [nx, ny] = kind === 'rip' ? [-ey, ex] : [ey, -ex];
  return { kind, originXMm: x1Mm, originYMm: y1Mm, ex, ey, nx, ny, lengthMm };
}

/** Grain angle of the panel frame, in (-90, 90] deg, for an angle in the seam's frame, rad. */
export function panelAngleDeg(frame: SeamFrame, angleRad: number): number {
  const x = Math.cos(angleRad) * frame.ex + Math.sin(angleRad) * frame.nx;
  const y = Math.cos(angleRad) * frame.ey + Math.sin(angleRad) * frame.ny;
  const deg = (Math.atan2(y, x) * 180) / Math.PI;
  return deg <= -90 ? deg + 180 : deg > 90 ? deg - 180 : deg;
}
