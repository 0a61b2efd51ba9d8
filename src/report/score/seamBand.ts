import type { SeamResult } from '../../core/results/scoreResult.js';
import { levelPath } from '../draw/levelPath.js';
import { mergeStretches } from './mergeStretches.js';
import type { ScoreFrame } from './scoreFrame.js';
import { seamStretches } from './seamStretches.js';
import type { SeamTrack } from './seamTrack.js';

/**
 * The band beside a seam: colour, shape and thickness follow V along its length, hatched where
 * untold. A dark edge with a light one round it keeps it readable on maple and on walnut.
 * @param hatchId id of the `hatchPattern`
 * @param ends what to leave free at the two ends, px
 */
export function seamBand(
  seam: SeamResult,
  track: SeamTrack,
  { scale, bandPx }: ScoreFrame,
  hatchId: string,
  [startPx, endPx]: readonly [number, number] = [0, 0],
): string {
  const within = (mm: number) => Math.min(track.lengthPx - endPx, Math.max(startPx, mm * scale));
  const stretches = mergeStretches(seamStretches(seam)).flatMap(({ fromMm, toMm, level }) => {
    const [fromPx, toPx] = [within(fromMm), within(toMm)];
    if (toPx <= fromPx) return [];
    const thickPx = bandPx * (level?.thickness ?? 0.6);
    const path = levelPath(level?.shape ?? 'solid', fromPx, toPx, thickPx);
    return [{ fill: level?.colour ?? `url(#${hatchId})`, path, quiet: level?.fromV === 0 }];
  });
  const outline = stretches.map(({ path }) => path).join('');
  // What disappears gets no light edge: on walnut it would be the brightest line of all.
  const seen = stretches.flatMap(({ path, quiet }) => (quiet ? [] : [path])).join('');
  const edge = (d: string, colour: string, width: number, opacity: number) =>
    `<path d="${d}" fill="none" stroke="${colour}" stroke-opacity="${opacity}" stroke-width="${width}" stroke-linejoin="round"/>`;
  const fills = stretches.map(({ path, fill }) => `<path d="${path}" fill="${fill}"/>`).join('');
  const edges = edge(seen, '#ffffff', 4, 0.85) + edge(outline, '#161616', 1.8, 0.9);
  return `<g transform="${track.transform}">${edges}${fills}</g>`;
}
