import type {
  ArrangedBoard,
  ArrangedJoint,
  ArrangeResult,
} from '../../core/results/arrangeResult.js';
import { scaleText } from '../ramp/scaleText.js';
import { cueNoun } from '../words/cueNoun.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { visibilityClause } from '../words/visibilityClause.js';
import { boardLie } from './boardName.js';
import { headlineOfArrange } from './headlineOfArrange.js';

/** The order found, as one would call it out at the bench, from the top of the panel down. */
export function describeArrange(result: ArrangeResult, units: LengthUnits): string[] {
  const boards = result.order.map((board, k) => {
    const joint = result.joints[k];
    const words = [`${board.photo}${board.isImagined ? ' (its mate, imagined)' : ''}`];
    words.push(...[boardLie(board), slideWords(board, units)].filter(Boolean));
    return `${k + 1}. ${words.join(', ')}${joint ? `; the joint below it ${jointWords(joint)}` : ''}`;
  });
  return [
    headlineOfArrange(result),
    '',
    'From the top down:',
    ...boards,
    '',
    proofOf(result),
    ...result.conflicts.map((conflict) => conflict.text),
    ...result.notes,
    scaleText,
  ];
}

/** As a verb: `shows (V 2.3): lines that do not meet`. */
export function jointWords({ v, word, cue }: ArrangedJoint): string {
  if (v === null || !word) return 'cannot be told';
  return `${visibilityClause(word, false)} (V ${v.toFixed(1)})${v >= 0.5 && cue ? `: ${cueNoun(cue)}` : ''}`;
}

/** `slid 3/8 in to the right`; empty where it lies centred. */
export function slideWords({ slideMm }: ArrangedBoard, units: LengthUnits): string {
  if (Math.abs(slideMm) < 0.5) return '';
  return `slid ${smallLengthText(Math.abs(slideMm), units)} to the ${slideMm > 0 ? 'right' : 'left'}`;
}

/** How sure it is that no other order does better. */
export function proofOf({ exact, laid }: ArrangeResult): string {
  if (laid === 'byHand') return 'Laid by hand.';
  if (!exact) return 'A good order; too many boards to be sure that none is better.';
  return laid === 'asGrown'
    ? 'In no other order or way round does the figure run on better.'
    : 'No other order or way round shows less.';
}
