import { SeamgrainError } from '../../errors.js';
import type { PlaningBudget } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';

/**
 * What the spare thickness can absorb after glue-up.
 * A step s at a joint must come off the high side of both faces, a bow b off the ends of one face
 * and the middle of the other: each costs its own height once, so s + b <= rough - finished
 * [derived].
 * @param roughMm thickness before flattening, mm
 * @param finishedMm thickness wanted, mm
 * @throws SeamgrainError `cannotDo` when there is nothing to plane off
 */
export function planingBudget(roughMm: number, finishedMm: number): PlaningBudget {
  const toLoseMm = roughMm - finishedMm;
  if (toLoseMm < 0) {
    throw new SeamgrainError(
      'cannotDo',
      `the stock is ${lengthWords(-toLoseMm)} too thin`,
      'take thicker stock or a thinner finished panel',
    );
  }
  const lose = lengthWords(toLoseMm);
  const notes = [
    `Panel and front lose the same ${lose}, half from each face: plane the front in its opening or to the same setting.`,
    'A front planed more or less than the panel parts from its lines: t further down shifts a line by t / tan(ring angle to the face), most in flatsawn wood.',
  ];
  if (toLoseMm === 0) notes.push('Nothing is left for flattening: any step or bow stays.');
  return {
    roughMm,
    finishedMm,
    toLoseMm,
    eachFaceMm: toLoseMm / 2,
    absorbsMm: toLoseMm,
    notes,
  };
}
