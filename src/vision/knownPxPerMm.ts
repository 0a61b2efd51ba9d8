import { SeamgrainError } from '../core/errors.js';
import type { PhotoScale } from '../core/image/photoScale.js';
import { distancePx } from './edgePxPerMm.js';

const shortestPx = 20;

/**
 * Density of a square-on photo from one known distance in it: pixels over millimetres.
 * @throws SeamgrainError badPanel when the places lie outside the photo or within 20 px of each
 *   other, or the distance is not more than zero
 */
export function knownPxPerMm(
  { fromPx, toPx, lengthMm }: Extract<PhotoScale, { kind: 'known' }>,
  photo: { readonly width: number; readonly height: number },
): number {
  for (const { x, y } of [fromPx, toPx]) {
    if (!(x >= 0 && y >= 0 && x <= photo.width && y <= photo.height)) {
      throw new SeamgrainError(
        'badPanel',
        `The place (${x}, ${y}) lies outside the photo, which is ${photo.width} x ${photo.height} px.`,
        'Give the two ends of the known distance in photo pixels.',
      );
    }
  }
  if (!(lengthMm > 0 && Number.isFinite(lengthMm))) {
    throw new SeamgrainError('badPanel', 'The known distance must be more than zero.');
  }
  const lengthPx = distancePx(fromPx, toPx);
  if (lengthPx < shortestPx) {
    throw new SeamgrainError(
      'badPanel',
      `The known distance spans only ${lengthPx.toFixed(0)} px, too short to give a scale.`,
      "Use the longest distance you know, such as the panel's length.",
    );
  }
  return lengthPx / lengthMm;
}
