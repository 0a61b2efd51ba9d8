import type { SeamResult } from '../../core/results/scoreResult.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import type { VisibilityLevel } from '../../report/ramp/visibilityRamp.js';

/** A stretch of a seam that is equally visible throughout. */
export interface BandStretch {
  readonly fromMm: number;
  readonly toMm: number;
  /** null: the photo cannot tell. */
  readonly level: VisibilityLevel | null;
}

/** Cuts a seam into stretches of one level: each window reaches half way to its neighbours. */
export function seamBand(seam: SeamResult): readonly BandStretch[] {
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const lengthMm = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  const windows = [...seam.windows].sort((a, b) => a.atMm - b.atMm);
  if (windows.length === 0) {
    return [{ fromMm: 0, toMm: lengthMm, level: levelOfVisibility(seam.visibility.v) }];
  }
  const stretches: BandStretch[] = [];
  windows.forEach(({ atMm, v }, index) => {
    const before = windows[index - 1];
    const after = windows[index + 1];
    const fromMm = before ? (before.atMm + atMm) / 2 : 0;
    const toMm = after ? (after.atMm + atMm) / 2 : lengthMm;
    const level = levelOfVisibility(v);
    const last = stretches.at(-1);
    if (last && last.level === level) stretches[stretches.length - 1] = { ...last, toMm };
    else stretches.push({ fromMm, toMm, level });
  });
  return stretches;
}
