import type { AsCutResult } from '../../core/results/asCutResult.js';
import { lengthWords } from '../../core/units/lengthWords.js';

/** What follows from the measured pieces, as lines for a terminal. */
export function describeAsCut(asCut: AsCutResult): string[] {
  const lost =
    asCut.lostAcrossMm === null
      ? 'Not every piece was measured, so the wood really lost is not known.'
      : `Lost across the grain: ${lengthWords(asCut.lostAcrossMm)}, planned ${lengthWords(asCut.plannedLossMm)}.`;
  return [
    '',
    'AS CUT',
    lost,
    ...asCut.openings.map(
      ({ front, widthMm, lengthMm, frontWidthMm, frontLengthMm }) =>
        `Opening of the ${front}: ${lengthWords(lengthMm)} by ${lengthWords(widthMm)}; the ${front} can be ${lengthWords(frontLengthMm)} by ${lengthWords(frontWidthMm)}.`,
    ),
    `Glued face: ${lengthWords(asCut.gluedFace.lengthMm)} by ${lengthWords(asCut.gluedFace.widthMm)}.`,
    ...asCut.advice.map((text) => `> ${text}`),
    ...asCut.notes,
  ];
}
