import { type ArrangeRules, showsHeart } from './arrangeRules.js';
import type { BoardWay } from './boardWay.js';
import { type JointTable, jointBetween } from './jointTable.js';
import { isMatched, type MatchedLie } from './matchedWays.js';
import type { StackProblem } from './stackProblem.js';

/** A joint that the photos cannot tell counts as just visible. */
const untoldV = 1;

/** What a joint of two neighbours costs. */
export type JointCost = (above: BoardWay, below: BoardWay) => number;

/** V^3 of the joint. */
export const costOfSight =
  (table: JointTable): JointCost =>
  (above, below) =>
    (jointBetween(table, above, below).v ?? untoldV) ** 3;

/** The search for the stack of least cost over the given ways. */
export function stackProblemOf(
  table: JointTable,
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
  ways: readonly BoardWay[],
  costOf: JointCost,
): StackProblem {
  const states = ways.length;
  const cost = new Float64Array(states * states).fill(Number.POSITIVE_INFINITY);
  ways.forEach((above, i) => {
    ways.forEach((below, j) => {
      if (above.board === below.board || !isAllowed(rules, matched, above, below)) return;
      cost[i * states + j] = costOf(above, below);
    });
  });
  const boardOf = Int32Array.from(ways, ({ board }) => board);
  return {
    boardCount: table.boards.length,
    boardOf,
    statesOf: table.boards.map((_, board) =>
      [...boardOf.keys()].filter((state) => boardOf[state] === board),
    ),
    cost,
    top: rules.top,
    bottom: rules.bottom,
    neighbours: [...rules.together, ...matched.map(({ pair }) => pair.boards)],
    centred: matched[0]?.pair.boards ?? null,
  };
}

function isAllowed(
  rules: ArrangeRules,
  matched: readonly MatchedLie[],
  above: BoardWay,
  below: BoardWay,
): boolean {
  if (rules.heart === 'alternating') {
    const [a, b] = [showsHeart(rules, above), showsHeart(rules, below)];
    if (a !== null && b !== null && a === b) return false;
  }
  return matched.every((lie) => {
    const [p, q] = lie.pair.boards;
    const isPair =
      (above.board === p && below.board === q) || (above.board === q && below.board === p);
    return !isPair || isMatched(lie, above, below);
  });
}
