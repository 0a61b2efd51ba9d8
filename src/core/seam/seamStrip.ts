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
  const strip = { plane, pxPerMm, reachAMm: rowsA / pxPerMm, reachBMm: rowsB / pxPerMm };
  if (frame.ey === 0 && Math.min(source.width, source.height) > 1)
    readLevel(strip, source, sourcePxPerMm, frame);
  else readSlanted(strip, source, sourcePxPerMm, frame);
  return strip;
}

function readSlanted(
  { plane: { width, height, data }, pxPerMm, reachAMm }: SeamStrip,
  source: Plane,
  sourcePxPerMm: number,
  frame: SeamFrame,
): void {
  for (let from = 0; from < width; from += tilePx) {
    const to = Math.min(width, from + tilePx);
    for (let j = 0; j < height; j++) {
      const eta = (j + 0.5) / pxPerMm - reachAMm;
      const x0 = (frame.originXMm + eta * frame.nx) * sourcePxPerMm - 0.5;
      const y0 = (frame.originYMm + eta * frame.ny) * sourcePxPerMm - 0.5;
      for (let i = from; i < to; i++) {
        const xi = ((i + 0.5) / pxPerMm) * sourcePxPerMm;
        data[j * width + i] = sampleBilinear(source, x0 + xi * frame.ex, y0 + xi * frame.ey);
      }
    }
  }
}

/** Along the picture's own rows: where between its pixels they lie is worked out once for each. */
function readLevel(
  { plane: { width, height, data }, pxPerMm, reachAMm }: SeamStrip,
  source: Plane,
  sourcePxPerMm: number,
  frame: SeamFrame,
): void {
  const clamped = (px: number, size: number) => Math.min(size - 1, Math.max(0, px));
  const column = new Int32Array(width);
  const share = new Float64Array(width);
  for (let i = 0; i < width; i++) {
    const xMm = frame.originXMm + ((i + 0.5) / pxPerMm) * frame.ex;
    const x = clamped(xMm * sourcePxPerMm - 0.5, source.width);
    column[i] = Math.min(source.width - 2, Math.floor(x));
    share[i] = x - column[i];
  }
  for (let j = 0; j < height; j++) {
    const yMm = frame.originYMm + ((j + 0.5) / pxPerMm - reachAMm) * frame.ny;
    const y = clamped(yMm * sourcePxPerMm - 0.5, source.height);
    const row = Math.min(source.height - 2, Math.floor(y));
    mixRows(source, row, y - row, column, share, data.subarray(j * width, (j + 1) * width));
  }
}

function mixRows(
  { width, data }: Plane,
  row: number,
  lowerShare: number,
  column: Int32Array,
  share: Float64Array,
  out: Float32Array,
): void {
  const [upper, lower] = [row * width, row * width + width];
  for (let i = 0; i < out.length; i++) {
    const u = upper + column[i];
    const l = lower + column[i];
    const top = data[u] + share[i] * (data[u + 1] - data[u]);
    const bottom = data[l] + share[i] * (data[l + 1] - data[l]);
    out[i] = top + lowerShare * (bottom - top);
  }
}
