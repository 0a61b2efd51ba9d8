import { darkContrast, farthestMm } from './closedGap.js';
import type { SeamStrip } from './seamStrip.js';

/** Wood beside the seam by which a column is judged, mm deep. */
const deepMm = 12;
/** Blur of the lens and lean of the other joint beside its dark, mm. */
const besideMm = 0.6;

/** Dark columns of one side, from `from` up to before `to`, in mm along the seam. */
export interface DarkSpan {
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * Columns of one side of a strip that an open joint has blackened.
 *
 * @param side -1 for side A, 1 for side B. @param at where to look, mm along the seam.
 */
export function darkSpans(strip: SeamStrip, side: -1 | 1, at: readonly number[]): DarkSpan[] {
  const { pxPerMm, plane } = strip;
  const means = columnMeans(strip, side);
  if (!means) return [];
  const wood = [...means].sort((a, b) => a - b)[means.length >> 1];
  return at.flatMap((xi) => {
    const [first, last] = [
      Math.max(0, Math.round((xi - farthestMm) * pxPerMm)),
      Math.min(plane.width, Math.round((xi + farthestMm) * pxPerMm)),
    ];
    let [from, to] = [last, first];
    for (let i = first; i < last; i++) {
      if (means[i] > wood - darkContrast) continue;
      from = Math.min(from, i);
      to = i + 1;
    }
    if (from >= to) return [];
    return [{ fromMm: from / pxPerMm - besideMm, toMm: to / pxPerMm + besideMm }];
  });
}

/** Mean of every column over the wood next to the seam; null without rows on that side. */
function columnMeans(strip: SeamStrip, side: -1 | 1): Float64Array | null {
  const { width, height, data } = strip.plane;
  const seamRow = Math.round(strip.reachAMm * strip.pxPerMm);
  const deep = Math.round(deepMm * strip.pxPerMm);
  const top = side < 0 ? Math.max(0, seamRow - deep) : seamRow;
  const bottom = side < 0 ? seamRow : Math.min(height, seamRow + deep);
  if (bottom <= top) return null;
  const means = new Float64Array(width);
  for (let j = top; j < bottom; j++) {
    for (let i = 0; i < width; i++) means[i] += data[j * width + i] / (bottom - top);
  }
  return means;
}
