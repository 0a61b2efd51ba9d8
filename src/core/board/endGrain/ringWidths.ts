import type { Plane } from '../../image/plane.js';
import { sampleBilinear } from '../../image/sampleBilinear.js';
import { bandAmplitudes } from '../../seam/bandAmplitudes.js';
import { spacingMm } from '../../seam/windowCues.js';

const profileStepMm = 0.2;
const halfMm = 15;

/** Median and tenths of the ring widths met along the middle of an end; null where none is read. */
export interface RingWidths {
  readonly median: number | null;
  readonly p10: number | null;
  readonly p90: number | null;
}

/**
 * Ring widths from profiles across the rings at places along mid-thickness.
 * @param acrossRad direction across the rings at a place of mid-thickness.
 */
export function ringWidths(
  plane: Plane,
  pxPerMm: number,
  acrossRad: (xMm: number) => number,
): RingWidths {
  const widths: number[] = [];
  const yMm = plane.height / pxPerMm / 2;
  for (let xMm = 3; xMm < plane.width / pxPerMm - 3; xMm += 3) {
    const [ux, uy] = [Math.cos(acrossRad(xMm)), Math.sin(acrossRad(xMm))];
    const n = Math.round((2 * halfMm) / profileStepMm);
    const u = Float64Array.from({ length: n }, (_, k) => (k + 0.5) * profileStepMm);
    const profile = u.map((t) => {
      const x = (xMm + (t - halfMm) * ux) * pxPerMm - 0.5;
      const y = (yMm + (t - halfMm) * uy) * pxPerMm - 0.5;
      const inside = x >= 0 && y >= 0 && x < plane.width && y < plane.height;
      return inside ? sampleBilinear(plane, x, y) : Number.NaN;
    });
    const bands = bandAmplitudes(profile, profile, u, halfMm);
    if (bands.length > 0) widths.push(spacingMm(bands, 'A'));
  }
  widths.sort((a, b) => a - b);
  const at = (q: number) => widths[Math.floor(q * (widths.length - 1))] ?? null;
  return { median: at(0.5), p10: at(0.1), p90: at(0.9) };
}
