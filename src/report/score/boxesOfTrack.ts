import type { Box } from '../draw/box.js';
import { pointOnTrack } from './pointOnTrack.js';
import type { ScoreFrame } from './scoreFrame.js';
import type { SeamTrack } from './seamTrack.js';

/** What the seam and its band cover, as a chain of boxes that labels keep off. */
export function boxesOfTrack(track: SeamTrack, { bandPx, gapPx }: ScoreFrame): Box[] {
  const count = Math.max(1, Math.ceil(track.lengthPx / 24));
  return Array.from({ length: count }, (_, index) => {
    const corners = [index, index + 1].flatMap((end) =>
      [-3, gapPx + bandPx + 1].map((out) =>
        pointOnTrack(track, (end * track.lengthPx) / count, out),
      ),
    );
    const xs = corners.map((corner) => corner.x);
    const ys = corners.map((corner) => corner.y);
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
  });
}
