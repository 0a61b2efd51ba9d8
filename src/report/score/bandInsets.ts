import type { Box } from '../draw/box.js';
import { boxesOverlap } from '../draw/boxesOverlap.js';
import { pointOnTrack } from './pointOnTrack.js';
import type { ScoreFrame } from './scoreFrame.js';
import type { SeamTrack } from './seamTrack.js';

/**
 * How far a band must keep back from its seam's two ends to leave the bands of other seams, which
 * it meets there, free.
 * @param others boxes of the seams that it may meet
 */
export function bandInsets(
  track: SeamTrack,
  others: readonly Box[],
  { gapPx, bandPx }: ScoreFrame,
): readonly [startPx: number, endPx: number] {
  const far = Math.min(40, track.lengthPx / 3);
  const blocked = (alongPx: number) => {
    const { x, y } = pointOnTrack(track, alongPx, gapPx + bandPx / 2);
    return others.some((box) => boxesOverlap({ x: x - 3, y: y - 3, width: 6, height: 6 }, box));
  };
  const inset = (at: (stepPx: number) => number) => {
    for (let step = 0; step < far; step++) if (!blocked(at(step))) return step;
    return 0;
  };
  return [inset((step) => step), inset((step) => track.lengthPx - step)];
}
