import type { CompareReason } from '../../core/results/compareResult.js';
import { cutCueNoun } from '../forecast/cutCueNoun.js';
import { wordOfV } from '../forecast/wordOfV.js';

/** What is to be told of a candidate beside the one that it is compared with. */
export interface Decision {
  readonly rank: number;
  readonly decides: CompareReason | null;
  /** What the maker calls the other one: the first's second, any other's better. */
  readonly otherName: string;
  /** Its seasonal gap over the other's; null where the rings of one are unknown, or within error. */
  readonly movesShare: number | null;
}

const what = {
  front: 'the joints of the front show',
  median: 'a typical rip shows',
  best: 'the best rip shows',
} as const;

/**
 * What decides about a candidate, in one plain sentence without a figure of visibility:
 * `Loses least: a typical rip shows less than in A, where the eye catches a turn of the grain; A
 * moves half as much.` Empty when it stands alone.
 */
export function decidesText({ rank, decides, otherName, movesShare }: Decision): string {
  if (!decides) return '';
  const moves = movesShare === null ? '' : `; ${movesText(movesShare, otherName)}`;
  return `${lookText(rank, decides, otherName)}${moves}.`;
}

function lookText(rank: number, { by, v, otherV, cue }: CompareReason, other: string): string {
  if (by === 'equal') return `Nothing that a cut would show sets it apart from ${other}`;
  if (by === 'untold' || v === null || otherV === null) {
    return v === null
      ? 'Last: it cannot be told, or the front does not fit'
      : `Loses least: ${other} cannot be told, or the front does not fit there`;
  }
  const little = wordOfV(v) === wordOfV(otherV) ? 'a little ' : '';
  const caught = cue ? cutCueNoun(cue) : null;
  if (rank === 1) {
    const there = caught ? `, where the eye catches ${caught}` : '';
    return `Loses least: ${what[by]} ${little}less than in ${other}${there}`;
  }
  const here = caught ? `; the eye catches ${caught}` : '';
  return `${what[by].replace(/^\w/, (letter) => letter.toUpperCase())} ${little}more than in ${other}${here}`;
}

/** Said of the one that moves less. */
function movesText(share: number, other: string): string {
  const [who, less] = share <= 1 ? ['it', share] : [other, 1 / share];
  if (less > 0.45 && less < 0.55) return `${who} moves half as much`;
  return `${who} moves ${5 * Math.round(20 * (1 - less))} % less`;
}
