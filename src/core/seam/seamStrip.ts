import { createPlane, type Plane } from '../image/plane.js';
import { sampleBilinear } from '../image/sampleBilinear.js';
import type { SeamFrame } from './seamFrame.js';

/**
 * The wood on both sides of a seam, turned so that the seam is a straight row: column i lies at
 * xi = (i + 0.5) / pxPerMm, row j at eta = (j + 0.5) / pxPerMm - reachAMm.
 */
export interface SeamStrip {
  readonly plane: Plane;
  readonly pxPerMm: number;
  readonly reachAMm: number;
  readonly reachBMm: number;
}

/**
 * Reads the strip out of the panel by bilinear sampling.
 *
 * @param source any plane of the panel, at sourcePxPerMm.
 * @param pxPerMm scale of the strip; not above the source's.
 * @param reachAMm, reachBMm how far the strip goes to either side, mm.
 */
export function seamStrip(
  source: Plane,
  sourcePxPerMm: number,
  frame: SeamFrame,
  pxPerMm: number,
  reachAMm: number,
  reachBMm: number,
): SeamStrip {
  const rowsA = Math.round(reachAMm * pxPerMm);
  const rowsB = Math.max(rowsA > 1 ? 0 : 2, Math.round(reachBMm * pxPerMm));
  const plane = createPlane(Math.max(2, Math.floor(frame.lengthMm * pxPerMm)), rowsA + rowsB);
  for (let j = 0; j < plane.height; j++) {
    const eta = (j + 0.5 - rowsA) / pxPerMm;
    const x0 = frame.originXMm + eta * frame.nx;
    const y0 = frame.originYMm + eta * frame.ny;
    for (let i = 0; i < plane.width; i++) {
      const xi = (i + 0.5) / pxPerMm;
      const x = (x0 + xi * frame.ex) * sourcePxPerMm - 0.5;
      const y = (y0 + xi * frame.ey) * sourcePxPerMm - 0.5;
      plane.data[j * plane.width + i] = sampleBilinear(source, x, y);
    }
  }
  return { plane, pxPerMm, reachAMm: rowsA / pxPerMm, reachBMm: rowsB / pxPerMm };
}
