import { SeamgrainError } from '../../core/errors.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { parsePointsPx } from './parsePointsPx.js';

/** A line laid along a ring, photo pixels. */
export type TangentPx = readonly [PointPx, PointPx];

/** Reads one `--tangent`, `x1,y1 x2,y2` in photo pixels; adds it to the earlier ones. */
export function parseTangent(
  text: string,
  earlier: readonly TangentPx[] = [],
): readonly TangentPx[] {
  const places = parsePointsPx(text);
  if (places?.length === 2) return [...earlier, [places[0]!, places[1]!]];
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not a tangent.`,
    'Write two places along one ring in photo pixels: "820,400 1010,365".',
  );
}
