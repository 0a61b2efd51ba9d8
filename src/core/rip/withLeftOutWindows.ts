import type { SeamWindow } from '../results/scoreResult.js';

/**
 * A joint's stretches with those that were left out of its measure among them: nothing is told
 * there.
 *
 * @param atMm middles of all its stretches.
 */
export function withLeftOutWindows(
  told: readonly SeamWindow[],
  atMm: readonly number[],
): SeamWindow[] {
  const known = new Map(told.map((window) => [window.atMm, window]));
  return atMm.map(
    (at) => known.get(at) ?? { atMm: at, v: null, cue: null, offsetMm: null, changeDeg: null },
  );
}
