import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import { capitalise } from '../words/capitalise.js';
import { countWord } from '../words/countWord.js';
import { ordinalWord } from '../words/ordinalWord.js';
import { visibilityClause } from '../words/visibilityClause.js';
import { boardName } from './boardName.js';

/** The answer in one breath: how they lie and which joint is the worst. */
export function headlineOfArrange({ order, joints, laid }: ArrangeResult): string {
  const how = {
    asGrown: 'as they grew',
    leastSeen: 'where their joints show least',
    byHand: 'by hand',
  }[laid];
  const boards = `${capitalise(countWord(order.length))} boards, laid ${how}.`;
  const told = joints.flatMap((joint, i) =>
    joint.v === null ? [] : [{ ...joint, i, v: joint.v }],
  );
  if (told.length === 0) return `${boards} The photos cannot tell how visible the joints would be.`;
  const worst = told.reduce((a, b) => (b.v > a.v ? b : a));
  const [above, below] = [boardName(order[worst.i]!), boardName(order[worst.i + 1]!)];
  // Long names can be cut to the same letters.
  const between =
    above === below
      ? `the ${ordinalWord(worst.i + 1)} from the top`
      : `between ${above} and ${below}`;
  const clause = worst.word ? visibilityClause(worst.word, false) : 'cannot be told';
  if (joints.length === 1) return `${boards} The joint ${clause}.`;
  return `${boards} The worst joint, ${between}, ${clause}.`;
}
