import { SeamgrainError } from '../../errors.js';
import { allWays } from './allWays.js';
import type { ArrangeRules, PlaningDirection } from './arrangeRules.js';
import type { BoardWay } from './boardWay.js';
import { heldKarp, mostBoardsExact } from './heldKarp.js';
import type { JointTable } from './jointTable.js';
import { longStack } from './longStack.js';
import type { MatchedLie } from './matchedWays.js';
import { isBetter } from './stackProblem.js';
import { stackProblemOf } from './stackProblemOf.js';

/** The chosen ways, from the top down. */
export interface FoundStack {
  readonly ways: readonly BoardWay[];
  readonly sum: number;
  readonly worst: number;
  readonly exact: boolean;
}

/**
 * Finds the stack of least sum of V^3 (ties: least worst joint) within the rules.
 *
 * @throws SeamgrainError `cannotDo` when the rules leave no stack.
 */
export function findStack(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
): FoundStack {
  const exact = table.boards.length <= mostBoardsExact;
  const directions: (PlaningDirection | null)[] =
    rules.planing === 'oneWay' ? ['right', 'left'] : [null];
  let best: FoundStack | null = null;
  for (const towards of directions) {
    const ways = allWays(table, rules, towards);
    const problem = stackProblemOf(table, rules, matched, ways);
    const stack = exact ? heldKarp(problem) : longStack(problem);
    if (!stack || (best && !isBetter(stack.sum, stack.worst, best.sum, best.worst))) continue;
    best = { ...stack, ways: stack.states.map((state) => ways[state]), exact };
  }
  if (best) return best;
  throw new SeamgrainError(
    'cannotDo',
    'No order of the boards keeps all the rules.',
    'Leave one of them out: a place at the top or bottom, a pair, the heart sides or the planing direction.',
  );
}
