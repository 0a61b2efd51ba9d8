import { SeamgrainError } from '../../core/errors.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { parsePointsPx } from './parsePointsPx.js';

/** Reads the two ends of a joint, `x,y x,y`, in photo pixels. */
export function parseJointEnds(text: string): readonly [PointPx, PointPx] {
  const places = parsePointsPx(text);
  if (places?.length === 2) return [places[0]!, places[1]!];
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not two places.`,
    'Write both ends of the joint in photo pixels: "40,1500 3960,1512".',
  );
}
