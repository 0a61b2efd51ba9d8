import { SeamgrainError } from '../../errors.js';
import { allWays } from './allWays.js';
import type { ArrangeRules, PlaningDirection } from './arrangeRules.js';
import { bestWays } from './bestWays.js';
import type { BoardWay } from './boardWay.js';
import { grownBetween, isOneFace } from './figure/grownOrder.js';
import { heldKarp, mostBoardsExact } from './heldKarp.js';
import { edgesBetween, type JointTable } from './jointTable.js';
import { longStack } from './longStack.js';
import type { MatchedLie } from './matchedWays.js';
import { isBetter } from './stackProblem.js';
import { costOfSight, type JointCost, stackProblemOf } from './stackProblemOf.js';

/** The chosen ways, from the top down. */
export interface FoundStack {
  readonly ways: readonly BoardWay[];
  /** Sum of V^3 over the joints, and the worst of them. */
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
  const best = searched(table, rules, matched, costOfSight(table), () => true);
  if (best) return best;
  throw new SeamgrainError(
    'cannotDo',
    'No order of the boards keeps all the rules.',
    rules.matched.length > 0
      ? 'A matched pair lies in the middle of the panel. Leave a rule out: a place at the top or bottom, another pair, the heart sides or the planing direction.'
      : 'Leave one of them out: a place at the top or bottom, a pair, the heart sides or the planing direction.',
  );
}

/**
 * An order is told from the figure when it is so much likelier than any other, log ratio: a
 * hundred times (ln 100; 95 % sure wants 3, but stretches of one joint are not independent).
 */
const leastLead = Math.log(100);

/**
 * The stack in which boards that were one face lie as they grew: the order and ways whose figure
 * runs on best within the rules, slid for the least sum of V^3.
 *
 * @returns null when the boards do not look like one face, when another order runs on nearly as
 *   well, or when a matched pair is wanted.
 */
export function findGrownStack(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
): FoundStack | null {
  if (!rules.asGrown || matched.length > 0 || !(table.ownGrown > 0)) return null;
  const grown = searched(table, rules, matched, costOfFigure(table), isCentred);
  if (!grown || !isOneFace(table, grown.ways)) return null;
  if (leadOfFigure(table, rules, matched, grown) < leastLead) return null;
  const lie = new Map(grown.ways.map((way) => [way.board, way]));
  const ways = allWays(table, rules, null).filter(({ board, face, turned }) => {
    const as = lie.get(board);
    return as?.face === face && as.turned === turned;
  });
  const problem = stackProblemOf(table, rules, matched, ways, costOfSight(table));
  const order = grown.ways.map(({ board }) => board);
  const slid = bestWays(problem, order);
  return slid && { ...slid, ways: slid.states.map((state) => ways[state]), exact: grown.exact };
}

const isCentred = ({ shift }: BoardWay) => shift === 0;

const costOfFigure =
  (table: JointTable): JointCost =>
  (above, below) =>
    -grownBetween(table, above, below);

/**
 * How far the figure speaks for a stack against the best one that has not all of its joints, log
 * ratio: any other stack lacks one of them, so each is forbidden in its turn.
 */
export function leadOfFigure(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
  best: Pick<FoundStack, 'ways' | 'sum'>,
): number {
  const costOf = costOfFigure(table);
  const leads = best.ways.slice(1).map((below, i) => {
    const [one, two] = edgesBetween(best.ways[i], below);
    const without: JointCost = (a, b) => {
      const edges = edgesBetween(a, b);
      return edges.includes(one) && edges.includes(two) ? Number.POSITIVE_INFINITY : costOf(a, b);
    };
    const other = searched(table, rules, matched, without, isCentred);
    return other ? other.sum - best.sum : Number.POSITIVE_INFINITY;
  });
  return Math.min(Number.POSITIVE_INFINITY, ...leads);
}

function searched(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
  costOf: JointCost,
  keep: (way: BoardWay) => boolean,
): FoundStack | null {
  const exact = table.boards.length <= mostBoardsExact;
  const directions: (PlaningDirection | null)[] =
    rules.planing === 'oneWay' ? ['right', 'left'] : [null];
  let best: FoundStack | null = null;
  for (const towards of directions) {
    const ways = allWays(table, rules, towards).filter(keep);
    const problem = stackProblemOf(table, rules, matched, ways, costOf);
    const stack = exact ? heldKarp(problem) : longStack(problem);
    if (!stack || (best && !isBetter(stack.sum, stack.worst, best.sum, best.worst))) continue;
    best = { ...stack, ways: stack.states.map((state) => ways[state]), exact };
  }
  return best;
}
