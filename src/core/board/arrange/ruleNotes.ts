import type { ArrangedJoint } from '../../results/arrangeResult.js';
import type { ArrangeRules } from './arrangeRules.js';
import { boardCalled, listNames } from './boardCalled.js';
import { mostBoardsExact } from './heldKarp.js';
import type { JointTable } from './jointTable.js';
import type { MatchedLie } from './matchedWays.js';

/** Two figures that agree less than this do not look like a resawn pair. */
const leastLikeness = 0.3;

/** How an order came about: proved best, looked for, or laid by hand. */
export type FoundBy = 'exact' | 'searched' | 'byHand';

/** What an arrangement rests on, in the user's words. */
export function ruleNotes(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
  joints: readonly ArrangedJoint[],
  how: FoundBy,
): string[] {
  const notes: string[] = [];
  if (how === 'searched') {
    notes.push(
      `More than ${mostBoardsExact} boards: a good order was looked for, but it is not proved to be the best.`,
    );
  }
  if (joints.some(({ v }) => v === null)) {
    notes.push('A joint that the photos cannot tell was counted as just visible.');
  }
  const unknown = (known: readonly unknown[]) =>
    table.boards.map((_, i) => i).filter((i) => (known[i] ?? null) === null);
  const called = (numbers: readonly number[]) =>
    listNames(numbers.map((i) => boardCalled(table.boards[i])));
  if (rules.heart !== 'free' && unknown(rules.heartFaces).length > 0) {
    notes.push(
      `The heart side of ${called(unknown(rules.heartFaces))} is not known; the rule does not bind there.`,
    );
  }
  if (rules.planing === 'oneWay' && unknown(rules.planingDirections).length > 0) {
    notes.push(
      `The planing direction of ${called(unknown(rules.planingDirections))} is not known; a photo of the face cannot tell it.`,
    );
  }
  for (const lie of matched) notes.push(...matchNotes(lie, called(lie.pair.boards)));
  if (matched.length > 0 && table.boards.length % 2 === 1) {
    notes.push('With an odd number of boards the matched joint lies half a board off the middle.');
  }
  return notes;
}

function matchNotes({ pair, likeness }: MatchedLie, boards: string): string[] {
  const name = `${pair.kind === 'book' ? 'Book' : 'Slip'}-match of ${boards}`;
  if (likeness === null || likeness.r < leastLikeness) {
    return [
      `${name}: the two figures hardly agree. Are these the faces that the saw parted, and both photos the right way up?`,
    ];
  }
  return [
    `${name}: laid without a slide, so that the figure stays even about its joint; take the same off both edges when jointing.`,
  ];
}
