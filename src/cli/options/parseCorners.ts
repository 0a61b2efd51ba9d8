import { SeamgrainError } from '../../core/errors.js';
import type { CornersPx } from '../../core/image/photoScale.js';
import { parsePointsPx } from './parsePointsPx.js';

/** Reads four corners, `x,y x,y x,y x,y`, photo pixels, clockwise from the panel's top left. */
export function parseCorners(text: string): CornersPx {
  const places = parsePointsPx(text);
  if (places?.length === 4) return [places[0], places[1], places[2], places[3]];
  throw new SeamgrainError(
    'wrongUsage',
    `'${text}' is not four corners.`,
    'Write four places in photo pixels, clockwise from the top left: "120,80 3900,95 3880,2900 140,2880".',
  );
}
