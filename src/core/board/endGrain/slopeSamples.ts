import { gaussianGradient } from '../../filter/gaussianGradient.js';
import type { Plane } from '../../image/plane.js';

/** Slopes of the picture at scattered points: each says which way the rings cross there. */
export interface SlopeSamples {
  readonly count: number;
  readonly xMm: Float32Array;
  readonly yMm: Float32Array;
  /** Direction of the slope, rad; its sign does not matter. */
  readonly angleRad: Float32Array;
  /** Steepness, per mm of log luminance, capped at a few times the usual (cracks, dirt). */
  readonly weight: Float32Array;
}

const stepMm = 0.4;
/** Frame left out: crop, rim stain, chipped edges. */
const marginMm = 1.2;
const capAt = 3;

/**
 * Reads slopes on a grid over the picture.
 *
 * @param sigmaMm scale of the slope; at 0.28 mm fine scratches and vessels average out and rings of
 *   1 mm stay.
 */
export function slopeSamples(plane: Plane, pxPerMm: number, sigmaMm = 0.28): SlopeSamples {
  const { width, height, gx, gy } = gaussianGradient(plane, Math.max(1, sigmaMm * pxPerMm));
  const step = Math.max(1, Math.round(stepMm * pxPerMm));
  const margin = Math.round(marginMm * pxPerMm);
  const xs: number[] = [];
  const ys: number[] = [];
  const angles: number[] = [];
  const weights: number[] = [];
  for (let y = margin; y < height - margin; y += step) {
    for (let x = margin; x < width - margin; x += step) {
      const k = y * width + x;
      xs.push((x + 0.5) / pxPerMm);
      ys.push((y + 0.5) / pxPerMm);
      angles.push(Math.atan2(gy[k], gx[k]));
      weights.push(Math.hypot(gx[k], gy[k]) * pxPerMm);
    }
  }
  const usual = rms(weights);
  return {
    count: xs.length,
    xMm: Float32Array.from(xs),
    yMm: Float32Array.from(ys),
    angleRad: Float32Array.from(angles),
    weight: Float32Array.from(weights, (w) => Math.min(w, capAt * usual)),
  };
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / Math.max(1, values.length));
