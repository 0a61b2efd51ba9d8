import type { Plane } from '../image/plane.js';
import type { SeamStrip } from './seamStrip.js';

/** A thin dark (or bright) line along a seam. */
export interface GlueRidge {
  /** Contrast times width, mm: integral of (log luminance - its neighbourhood) across the line. */
  readonly areaMm: number;
  /** Depth of the line at its middle, in log luminance (negative: dark), as blurred by the lens. */
  readonly peak: number;
}

const innerMm = 0.6;
const outerMm = 1.6;

/**
 * The line drawn along eta = etaMm by glue, a gap or a crushed edge, over one stretch of the seam.
 *
 * The mean profile across the line, less a straight base through the wood 0.6 to 1.6 mm away on
 * both sides; its integral over the inner 1.2 mm. A step of colour alone leaves an odd profile,
 * whose integral is zero.
 */
export function glueRidge(
  strip: SeamStrip,
  etaMm: number,
  xiFromMm: number,
  xiToMm: number,
): GlueRidge {
  const { plane, pxPerMm, reachAMm } = strip;
  const from = Math.max(0, Math.round(xiFromMm * pxPerMm));
  const to = Math.min(plane.width, Math.max(from + 1, Math.round(xiToMm * pxPerMm)));
  const meanOfRow = (j: number) => rowSum(plane, j, from, to) / (to - from);
  return ridgeOfRows(meanOfRow, plane.height, (etaMm + reachAMm) * pxPerMm - 0.5, pxPerMm);
}

/** Sum of pixels from .. to - 1 of a row. */
export function rowSum({ width, data }: Plane, row: number, from: number, to: number): number {
  let sum = 0;
  for (let k = row * width + from; k < row * width + to; k++) sum += data[k];
  return sum;
}

/**
 * The same from means along the rows beside a line.
 *
 * @param middle where the line lies between the rows, px.
 */
export function ridgeOfRows(
  meanOfRow: (row: number) => number,
  rows: number,
  middle: number,
  pxPerMm: number,
): GlueRidge {
  const first = Math.max(0, Math.ceil(middle - outerMm * pxPerMm));
  const last = Math.min(rows - 1, Math.floor(middle + outerMm * pxPerMm));
  const base = { above: 0, aboveAt: 0, aboveCount: 0, below: 0, belowAt: 0, belowCount: 0 };
  const inner: { eta: number; mean: number }[] = [];
  for (let j = first; j <= last; j++) {
    const mean = meanOfRow(j);
    const eta = (j - middle) / pxPerMm;
    if (eta < -innerMm) {
      base.above += mean;
      base.aboveAt += eta;
      base.aboveCount++;
    } else if (eta > innerMm) {
      base.below += mean;
      base.belowAt += eta;
      base.belowCount++;
    } else inner.push({ eta, mean });
  }
  if (base.aboveCount === 0 || base.belowCount === 0 || inner.length === 0) {
    return { areaMm: 0, peak: 0 };
  }
  const [va, vb] = [base.above / base.aboveCount, base.below / base.belowCount];
  const [xa, xb] = [base.aboveAt / base.aboveCount, base.belowAt / base.belowCount];
  const excess = inner.map((r) => r.mean - va - ((vb - va) * (r.eta - xa)) / (xb - xa));
  const areaMm = excess.reduce((s, e) => s + e, 0) / pxPerMm;
  const peak = excess.reduce((m, e) => (e * Math.sign(areaMm) > m * Math.sign(areaMm) ? e : m), 0);
  return { areaMm, peak };
}
