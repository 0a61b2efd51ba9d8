import type { SeamResult } from '../../core/results/scoreResult.js';
import { type CueFacts, cueText } from './cueText.js';
import type { LengthUnits } from './lengthUnits.js';
import type { PlacedSeam } from './placedSeam.js';
import { placeText } from './placeText.js';
import { seenFromText } from './seenFromText.js';
import { worstPlaces } from './worstPlaces.js';

/**
 * How far off a seam is seen and where most: `from as far as 6 1/2 ft, worst 14 3/8 in from the
 * left, where the lines step 3/32 in`. A seam that is alike from end to end has no worst place.
 */
export function worstPlaceText({ seam, runs }: PlacedSeam, units: LengthUnits): string {
  const { vanishesAtMm, cue } = seam.visibility;
  const far = vanishesAtMm === null ? '' : seenFromText(vanishesAtMm, units);
  const worst = worstPlaces(seam)[0];
  if (!worst) {
    return [far, cue ? `because ${cueText(factsOfSeam(seam), units)}` : '']
      .filter(Boolean)
      .join(', ');
  }
  const facts: CueFacts = { ...worst.window, cue: worst.window.cue ?? cue };
  if (isAlike(seam)) {
    return [far, `all along, because ${cueText(facts, units)}`].filter(Boolean).join(', ');
  }
  const placeMm = runs === 'along' ? worst.xMm : worst.yMm;
  const end = runs === 'along' ? 'left' : 'top';
  const where = `worst ${placeText(placeMm, units)} from the ${end}, where ${cueText(facts, units)}`;
  return [far, where].filter(Boolean).join(', ');
}

function factsOfSeam({ visibility, offset, grain }: SeamResult): CueFacts {
  return { cue: visibility.cue, offsetMm: offset.mm, changeDeg: grain.changeDeg };
}

/** Every told window within 15 % of the worst, and at least three of them. */
function isAlike({ windows }: SeamResult): boolean {
  const told = windows.map((window) => window.v).filter((v) => v !== null);
  return told.length >= 3 && Math.min(...told) >= 0.85 * Math.max(...told);
}
