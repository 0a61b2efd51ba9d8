import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { cueText } from '../../report/words/cueText.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import { visibilityClause } from '../../report/words/visibilityClause.js';
import type { FrontAnswer, JudgedSegment } from '../worker/frontMessages.js';

/** `left end, upper edge`; the reveal beside the front is told apart from a joint. */
export function segmentName({ piece, edge, glued }: JudgedSegment): string {
  return glued ? `${piece}, ${edge} edge` : `gap ${sideOf[edge]} the front`;
}

const sideOf = {
  upper: 'above',
  lower: 'below',
  left: 'left of',
  right: 'right of',
} as const;

/** What this place would cost, in one sentence. */
export function frontHeadline(answer: FrontAnswer | null, units: LengthUnits): string {
  if (!answer) return 'Reading the panel…';
  const told = answer.segments.filter(({ v }) => v !== null).sort((a, b) => b.v! - a.v!);
  const worst = told[0];
  if (!worst) return 'The photo cannot tell what the joints here would show.';
  const word = levelOfVisibility(worst.v)!.word;
  const all = told.every(({ v }) => levelOfVisibility(v)!.word === word);
  if (all && word === 'disappears') return 'With the front here, every joint and gap disappears.';
  const cue = cueText({ cue: worst.cue, offsetMm: null, changeDeg: null }, units);
  const what = worst.glued ? `joint, ${segmentName(worst)},` : `place, the ${segmentName(worst)},`;
  return `With the front here, the worst ${what} ${visibilityClause(word, false)}: ${cue}.`;
}
