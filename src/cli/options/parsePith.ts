import { SeamgrainError } from '../../core/errors.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { parsePointsPx } from './parsePointsPx.js';

/** Reads `--pith`, one place in photo pixels. */
export function parsePith(text: string): PointPx {
  const places = parsePointsPx(text);
  if (places?.length === 1) return places[0]!;
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not one place.`,
    'Write the pith in photo pixels, inside or outside the photo: "900,-350".',
  );
}
