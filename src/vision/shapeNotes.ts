import { SeamgrainError } from '../core/errors.js';

const wrongFactor = 2.5;
const doubtfulFactor = 1.25;
const wholeFrameFactor = 1.02;

/**
 * Compares the shape that the photo shows with the size that was given.
 *
 * Seen aslant, one direction is foreshortened; beyond a factor of 2.5 it is the size that is wrong.
 * @param pxPerMmAcross mean density along the panel's length, px/mm
 * @param pxPerMmDown mean density across its width, px/mm
 * @param wholeFrame the panel is the whole frame of a square-on photo, where both must agree
 * @returns notes in the user's words
 * @throws SeamgrainError badPanel when the two cannot belong together
 */
export function shapeNotes(
  pxPerMmAcross: number,
  pxPerMmDown: number,
  wholeFrame: boolean,
): string[] {
  const factor = Math.max(pxPerMmAcross / pxPerMmDown, pxPerMmDown / pxPerMmAcross);
  const percent = Math.round(100 * (factor - 1));
  if (factor > wrongFactor) {
    throw new SeamgrainError(
      'badPanel',
      `The panel's outline in the photo does not fit its size: one direction would be stretched ${factor.toFixed(1)} times.`,
      'The size is length x width as the panel lies in the photo (left to right first); check it and the corners.',
    );
  }
  if (wholeFrame && factor > wholeFrameFactor) {
    return [
      `The photo's shape differs from the size given by ${percent} %: crop it to the panel, or give the corners.`,
    ];
  }
  if (!wholeFrame && factor > doubtfulFactor) {
    return [
      `The photo sees the panel ${percent} % shorter one way than the other: taken well aslant, or the size is not right.`,
    ];
  }
  return [];
}
