import { SeamgrainError } from '../../core/errors.js';
import type { PhotoScale } from '../../core/image/photoScale.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parsePointsPx } from './parsePointsPx.js';

/** Reads one known distance, `x,y x,y LENGTH`: two places in photo pixels and how far apart they are. */
export function parseKnown(text: string): Extract<PhotoScale, { kind: 'known' }> {
  const match = /^\s*(\S+\s+\S+)\s+(.+)$/.exec(text);
  const places = match ? parsePointsPx(match[1]) : null;
  if (!match || places?.length !== 2) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' is not a known distance.`,
      'Write two places in photo pixels and the length between them: "210,400 3710,420 24in".',
    );
  }
  return { kind: 'known', fromPx: places[0], toPx: places[1], lengthMm: parseLengthMm(match[2]) };
}
