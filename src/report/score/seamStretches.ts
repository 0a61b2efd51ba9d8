import type { SeamResult } from '../../core/results/scoreResult.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import type { VisibilityLevel } from '../ramp/visibilityRamp.js';

/** A stretch of a seam that belongs to one window, or to several of one level. */
export interface SeamStretch {
  /** From the seam's first end, mm. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Null where untold; of the first window where several were merged. */
  readonly v: number | null;
  readonly level: VisibilityLevel | null;
}

/** The seam cut half-way between its windows, from end to end; a seam without windows is one. */
export function seamStretches(seam: SeamResult): SeamStretch[] {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  const windows = [...seam.windows].sort((a, b) => a.atMm - b.atMm);
  if (windows.length === 0) {
    const { v } = seam.visibility;
    return [{ fromMm: 0, toMm: lengthMm, v, level: levelOfVisibility(v) }];
  }
  const edges = windows.slice(1).map((window, i) => (windows[i]!.atMm + window.atMm) / 2);
  const ends = [0, ...edges, lengthMm].map((edge) => Math.min(lengthMm, Math.max(0, edge)));
  return windows.map((window, i) => ({
    fromMm: ends[i]!,
    toMm: ends[i + 1]!,
    v: window.v,
    level: levelOfVisibility(window.v),
  }));
}
