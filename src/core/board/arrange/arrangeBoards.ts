import type { ArrangedBoard, ArrangedJoint, ArrangeResult } from '../../results/arrangeResult.js';
import { visibilityWord } from '../../visibility/visibilityWord.js';
import { arrangeConflicts } from './arrangeConflicts.js';
import { type ArrangeRules, planesTowards, showsHeart } from './arrangeRules.js';
import type { BoardWay } from './boardWay.js';
import { checkRules } from './checkRules.js';
import { findStack } from './findStack.js';
import { type JointTable, jointBetween } from './jointTable.js';
import { type MatchedLie, matchedLie } from './matchedWays.js';
import { type FoundBy, ruleNotes } from './ruleNotes.js';
import { turnUpright } from './turnUpright.js';

/**
 * The best order and way round of boards whose joints were read.
 *
 * Cost = sum of V^3 over the joints, ties decided by the worst joint; exact for up to 12 boards,
 * a declared heuristic above.
 *
 * @throws SeamgrainError `wrongUsage` or `cannotDo` when the rules cannot be kept.
 */
export function arrangeBoards(table: JointTable, rules: ArrangeRules): ArrangeResult {
  checkRules(rules, table.boards);
  const matched = rules.matched.map((pair) => matchedLie(table, pair));
  const stack = findStack(table, rules, matched);
  const isFree = rules.top === null && rules.bottom === null;
  const ways = isFree ? turnUpright(stack.ways) : stack.ways;
  return describeStack(table, rules, ways, matched, stack.exact ? 'exact' : 'searched');
}

/**
 * The account of an order laid by hand: the same document as `arrangeBoards` gives, never exact.
 *
 * @param ways every board once, from the top down.
 */
export function judgeOrder(
  table: JointTable,
  rules: ArrangeRules,
  ways: readonly BoardWay[],
): ArrangeResult {
  return describeStack(table, rules, ways, [], 'byHand');
}

function describeStack(
  table: JointTable,
  rules: ArrangeRules,
  ways: readonly BoardWay[],
  matched: readonly MatchedLie[],
  how: FoundBy,
): ArrangeResult {
  const order = ways.map((way): ArrangedBoard => {
    const board = table.boards[way.board];
    return {
      photo: board.photos[way.face === 'B' ? 1 : 0] ?? board.photos[0],
      face: way.face,
      turned: way.turned,
      board: way.board + 1,
      slideMm: way.shift * table.stepMm + 0,
      isImagined: board.isImagined,
      showsHeart: showsHeart(rules, way),
      planesTowards: planesTowards(rules, way),
    };
  });
  const joints = order.slice(1).map((below, i): ArrangedJoint => {
    const { v, cue } = jointBetween(table, ways[i], ways[i + 1]);
    const word = v === null ? null : visibilityWord(v);
    return { above: order[i].photo, below: below.photo, v, cue, word };
  });
  return {
    schema: 'seamgrain/arrange@1',
    order,
    joints,
    totalCost: joints.reduce((sum, { v }) => sum + (v ?? 0) ** 3, 0),
    exact: how === 'exact',
    panel: {
      lengthMm: table.panelLengthMm,
      widthMm: table.boards.reduce((sum, { widthMm }) => sum + widthMm, 0),
    },
    matched: matched.map(({ pair, likeness }) => ({
      kind: pair.kind,
      boards: [pair.boards[0] + 1, pair.boards[1] + 1],
      likeness: likeness?.r ?? null,
    })),
    conflicts: arrangeConflicts(order),
    notes: [...table.notes, ...ruleNotes(table, rules, matched, joints, how)],
  };
}
