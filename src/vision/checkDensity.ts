import { SeamgrainError } from '../core/errors.js';

const coarsestPxPerMm = 0.25;
const smallestPx = 24;

/**
 * Refuses a panel that the photo shows too small to measure anything on.
 * @param pxPerMm density of the photo on the panel
 * @throws SeamgrainError badPhoto under 0.25 px/mm (a 1/8 in kerf is then under one pixel) or
 *   with fewer than 24 px either way; badPanel when the scale makes the panel absurdly small
 */
export function checkDensity(pxPerMm: number, widthMm: number, heightMm: number): void {
  if (pxPerMm < coarsestPxPerMm) {
    throw new SeamgrainError(
      'badPhoto',
      `The photo has only ${pxPerMm.toPrecision(2)} px/mm on the panel; a saw kerf is less than a pixel wide.`,
      'Check the size given, or photograph a smaller part of the panel from closer by; 6 px/mm is good.',
    );
  }
  const [acrossPx, downPx] = [widthMm * pxPerMm, heightMm * pxPerMm].map(Math.round);
  if (Math.min(acrossPx, downPx) < smallestPx) {
    throw new SeamgrainError(
      'badPhoto',
      `The panel is only ${acrossPx} x ${downPx} px in the photo.`,
      `At least ${smallestPx} px each way are needed, and some hundreds to measure well.`,
    );
  }
  if (Math.min(widthMm, heightMm) < 5) {
    throw new SeamgrainError(
      'badPanel',
      `By this scale the panel is only ${widthMm.toPrecision(2)} x ${heightMm.toPrecision(2)} mm.`,
      'Check the scale: it says how many photo pixels make one millimetre.',
    );
  }
}
