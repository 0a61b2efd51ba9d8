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

/** Columns read at a time: a strip across the picture would else meet every row of it anew. */
const tilePx = 64;

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
  const { width, height } = plane;
  for (let from = 0; from < width; from += tilePx) {
    const to = Math.min(width, from + tilePx);
    for (let j = 0; j < height; j++) {
      const eta = (j + 0.5 - rowsA) / pxPerMm;
      const x0 = (frame.originXMm + eta * frame.nx) * sourcePxPerMm - 0.5;
      const y0 = (frame.originYMm + eta * frame.ny) * sourcePxPerMm - 0.5;
      for (let i = from; i < to; i++) {
        const xi = ((i + 0.5) / pxPerMm) * sourcePxPerMm;
        plane.data[j * width + i] = sampleBilinear(source, x0 + xi * frame.ex, y0 + xi * frame.ey);
      }
    }
  }
  return { plane, pxPerMm, reachAMm: rowsA / pxPerMm, reachBMm: rowsB / pxPerMm };
}
