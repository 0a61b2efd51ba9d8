import type { SeamResult } from '../../core/results/scoreResult.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { capitalise } from './capitalise.js';
import type { LengthUnits } from './lengthUnits.js';
import { lostText } from './lostText.js';
import type { PlacedSeam } from './placedSeam.js';
import { placeText } from './placeText.js';
import { reasonFor } from './reasonFor.js';
import { worstPlaceText } from './worstPlaceText.js';

/**
 * One joint in two or three sentences: where it is, how it looks, what it lost, and what the photo
 * could not tell. `Upper joint, 4 1/8 in from the top: disappears. 1/8 in lost, give or take 1/64 in.`
 * @param withUntold also say what could not be told, and why; default true
 */
export function describeSeam(placed: PlacedSeam, units: LengthUnits, withUntold = true): string {
  const { seam, runs, name } = placed;
  const { line, visibility } = seam;
  const fromMm = runs === 'along' ? (line.y1Mm + line.y2Mm) / 2 : (line.x1Mm + line.x2Mm) / 2;
  const edge = runs === 'along' ? 'top' : 'left';
  const hand = seam.found === 'placed' ? ', placed by hand' : '';
  const shortName = name.replace(/ from the (top|left)$/, '');
  const head = `${shortName}, ${placeText(fromMm, units)} from the ${edge}${hand}`;
  const word = visibility.word ?? levelOfVisibility(visibility.v)?.word ?? null;
  const lost = lostText(placed, units);
  const sentences = [...(lost ? [lost] : []), ...(withUntold ? untoldTexts(seam, !lost) : [])].map(
    (text) => `${capitalise(text)}.`,
  );
  if (word === null) {
    const reason = reasonFor(seam.notes);
    const why = reason ? `, because ${reason}` : '';
    return [`${capitalise(head)}: cannot tell how visible it is${why}.`, ...sentences].join(' ');
  }
  const worst = isSeen(word) ? worstPlaceText(placed, units) : '';
  const detail = worst ? `${word === 'shows' || word === 'jumps out' ? ' ' : ', '}${worst}` : '';
  return [`${capitalise(head)}: ${word}${detail}.`, ...sentences].join(' ');
}

function isSeen(word: string): boolean {
  return word !== 'disappears' && word !== 'only if told';
}

/** What the photo did not give away: a sentence for each reason, none told twice. */
function untoldTexts({ visibility, grain, offset, notes }: SeamResult, noLoss: boolean): string[] {
  const steps = /grain|angle|direction|line|cross|step|offset/i;
  const missing = [
    ...(noLoss ? [['how much width was lost', /\blost|width|slide|loss/i] as const] : []),
    ...(grain.changeDeg === null ? [['how far the grain turns', steps] as const] : []),
    ...(offset.mm === null ? [['how far the lines step', steps] as const] : []),
  ];
  const byReason = new Map<string, string[]>();
  for (const [what, about] of missing) {
    // Said already where not even the visibility could be told.
    const reason = visibility.v === null ? '' : reasonFor(notes, about);
    byReason.set(reason, [...(byReason.get(reason) ?? []), what]);
  }
  return [...byReason].map(
    ([reason, what]) => `cannot tell ${what.join(' or ')}${reason ? `, because ${reason}` : ''}`,
  );
}
