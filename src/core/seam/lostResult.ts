import type { SeamResult } from '../results/scoreResult.js';
import { untoldLoss } from '../results/untoldSeam.js';
import { lengthWords } from '../units/lengthWords.js';
import type { LineMeasures } from './lineMeasures.js';
import { type LostWidth, lostWidth } from './lostWidth.js';

/** The lines of the two sides must meet at least this well somewhere for a width to be told. */
const leastExplained = 0.5;
/** A width less sure than this is not told, mm. */
const leastSureMm = 2;
/** The prior by itself would state 1.5 mm: a slide is told where the lines say clearly more. */
const leastSureSlideMm = 1;
/** And a wedge: half of what the prior by itself would state. */
const leastSureWedgeMm = 0.2;

/**
 * The contract's width lost and slide, and the wedge, with what they rest on; null with a note where
 * the lines of the two sides do not meet anywhere, or meet equally well over too wide a range.
 */
export function lostResult(
  seam: LineMeasures,
  own: readonly LineMeasures[],
): { readonly lost: SeamResult['lost']; readonly notes: readonly string[] } {
  const weighed = lostWidth(seam, own);
  if (!weighed) {
    return {
      lost: untoldLoss,
      notes: [
        'Too few grain lines cross this joint, or too little wood lies beside it, to tell a width ' +
          'lost or a slide.',
      ],
    };
  }
  if (weighed.explained < leastExplained) {
    const why = 'The grain lines of the two sides do not meet at any width lost or slide.';
    return { lost: untoldLoss, notes: [why] };
  }
  const sureWidth = weighed.lostSeMm <= leastSureMm;
  const sureSlide = weighed.slideSeMm <= leastSureSlideMm;
  const sureWedge = weighed.wedgeSeMm <= leastSureWedgeMm;
  const notes: string[] = [];
  if (!sureWidth && oneReading(weighed)) {
    notes.push('The lines meet about equally well over a wide range of widths lost.');
  } else if (!sureWidth) {
    notes.push(
      `The lines meet as well at a width of ${lengthWords(weighed.bestUnslidMm)} lost and nothing ` +
        `slid as at ${lengthWords(weighed.best.lostMm)} and a slide of ` +
        `${lengthWords(Math.abs(weighed.best.slideMm))}.`,
    );
  } else if (!sureSlide) {
    notes.push(
      'Lines that cross at one angle fix only width and slide together, not the slide alone.',
    );
  }
  return {
    lost: {
      mm: sureWidth ? weighed.lostMm : null,
      seMm: sureWidth ? weighed.lostSeMm : null,
      slideMm: sureSlide ? weighed.slideMm : null,
      slideSeMm: sureSlide ? weighed.slideSeMm : null,
      wedgeMm: sureWedge ? weighed.wedgeMm : null,
      wedgeSeMm: sureWedge ? weighed.wedgeSeMm : null,
      ...(sureWidth && sureSlide ? {} : alternativesOf(weighed)),
    },
    notes,
  };
}

/** Readings closer than this are one reading, mm. */
const sameReadingMm = 0.8;

const oneReading = ({ best, bestUnslidMm }: LostWidth) =>
  Math.abs(bestUnslidMm - best.lostMm) < sameReadingMm;

/** The best reading with nothing slid and the best of all, where they differ. */
function alternativesOf(weighed: LostWidth): Pick<SeamResult['lost'], 'alternatives'> {
  if (oneReading(weighed)) return {};
  return {
    alternatives: [
      { mm: weighed.bestUnslidMm, slideMm: 0 },
      { mm: weighed.best.lostMm, slideMm: weighed.best.slideMm },
    ],
  };
}
