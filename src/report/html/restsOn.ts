import type { ScoreResult } from '../../core/results/scoreResult.js';
import { capitalise } from '../words/capitalise.js';
import { joinWords } from '../words/joinWords.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { placeSeams } from '../words/placeSeams.js';
import { placeText } from '../words/placeText.js';
import { viewingDistanceText } from '../words/viewingDistanceText.js';

/**
 * What a score rests on, one sentence each: size and scale of the photo, viewing distance, what
 * was placed by hand, what the photo could not tell.
 */
export function restsOn(result: ScoreResult, units: LengthUnits, distanceMm?: number): string[] {
  const { widthMm, heightMm, pxPerMm } = result.panel;
  const placed = placeSeams(result);
  const byHand = placed
    .filter(({ seam }) => seam.found === 'placed')
    .map(({ name }) => `the ${name}`);
  const fine =
    pxPerMm < 3 ? ': too coarse to judge fine grain; step closer or use more of the frame' : '';
  const size = `${placeText(widthMm, units)} by ${placeText(heightMm, units)}`;
  const sentences = [
    `The panel is ${size}, with ${pxPerMm.toFixed(1)} pixels of the photo to the millimetre${fine}.`,
    distanceMm === undefined
      ? ''
      : `Judged for someone who stands ${viewingDistanceText(distanceMm, units)} away.`,
    byHand.length === 0
      ? ''
      : `${capitalise(joinWords(byHand))} ${byHand.length === 1 ? 'was' : 'were'} placed by hand.`,
    placed.some(isQuieterThanParts) ? quieterText : '',
    ...result.notes,
    ...seamNotes(placed),
  ];
  return sentences.filter(Boolean);
}

/** Each note once, with all the seams that it speaks of. */
function seamNotes(placed: readonly PlacedSeam[]): string[] {
  const notes = new Set(placed.flatMap(({ seam }) => seam.notes));
  return [...notes].map((note) => {
    const about = placed.filter(({ seam }) => seam.notes.includes(note)).map(({ name }) => name);
    return `${capitalise(joinWords(about))}: ${note}`;
  });
}

const quieterText =
  'Each stretch is drawn as it looks by itself. A joint called quieter than some of its stretches lies in wood that shows as much without a joint, so the eye does not single it out.';

/** Hardly seen as a whole, and yet a stretch of it by itself is seen by whoever looks. */
function isQuieterThanParts({ seam: { visibility, windows } }: PlacedSeam): boolean {
  return (visibility.v ?? 1) < 1 && windows.some(({ v }) => (v ?? 0) >= 1);
}
