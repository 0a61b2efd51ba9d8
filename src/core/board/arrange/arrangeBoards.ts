import type { ArrangedBoard, ArrangedJoint, ArrangeResult } from '../../results/arrangeResult.js';
import { visibilityWord } from '../../visibility/visibilityWord.js';
import { arrangeConflicts } from './arrangeConflicts.js';
import { type ArrangeRules, planesTowards, showsHeart } from './arrangeRules.js';
import type { BoardWay } from './boardWay.js';
import { brokenRules } from './brokenRules.js';
import { checkRules } from './checkRules.js';
import { grownBetween } from './figure/grownOrder.js';
import { findGrownStack, findStack } from './findStack.js';
import { type JointTable, jointBetween } from './jointTable.js';
import { type MatchedLie, matchedLie } from './matchedWays.js';
import { type FoundBy, ruleNotes } from './ruleNotes.js';
import { slideFewest } from './slideFewest.js';
import { turnUpright } from './turnUpright.js';

/**
 * The best order and way round of boards whose joints were read.
 *
 * Cost = sum of V^3 over the joints, ties decided by the worst joint; exact for up to 12 boards,
 * a declared heuristic above. Boards that look like one face cut up are laid as they grew instead
 * (`ArrangeRules.asGrown`), and the least cost is told beside it.
 *
 * @throws SeamgrainError `wrongUsage` or `cannotDo` when the rules cannot be kept.
 */
export function arrangeBoards(table: JointTable, rules: ArrangeRules): ArrangeResult {
  checkRules(rules, table.boards);
  const matched = rules.matched.map((pair) => matchedLie(table, pair));
  const least = findStack(table, rules, matched);
  const grown = findGrownStack(table, rules, matched);
  const stack = grown ?? least;
  const isFree = rules.top === null && rules.bottom === null;
  const upright = isFree ? turnUpright(stack.ways) : stack.ways;
  const ways = slideFewest(
    upright,
    table.boards.map(({ mostSteps }) => mostSteps),
  );
  return describeStack(table, rules, ways, matched, {
    how: stack.exact ? 'exact' : 'searched',
    laid: grown ? 'asGrown' : 'leastSeen',
    leastCost: least.sum,
  });
}

/**
 * The account of an order laid by hand: the same document as `arrangeBoards` gives, never exact,
 * with a note for every rule that it does not keep.
 *
 * @param ways every board once, from the top down.
 */
export function judgeOrder(
  table: JointTable,
  rules: ArrangeRules,
  ways: readonly BoardWay[],
): ArrangeResult {
  const matched = rules.matched.map((pair) => matchedLie(table, pair));
  const result = describeStack(table, rules, ways, matched, {
    how: 'byHand',
    laid: 'byHand',
    leastCost: null,
  });
  return { ...result, notes: [...brokenRules(table, rules, matched, ways), ...result.notes] };
}

/** How an order came about. */
interface Origin {
  readonly how: FoundBy;
  readonly laid: ArrangeResult['laid'];
  readonly leastCost: number | null;
}

function describeStack(
  table: JointTable,
  rules: ArrangeRules,
  ways: readonly BoardWay[],
  matched: readonly MatchedLie[],
  { how, laid, leastCost }: Origin,
): ArrangeResult {
  const order = ways.map((way): ArrangedBoard => {
    const board = table.boards[way.board];
    return {
      photo: board.photos[way.face === 'B' ? 1 : 0] ?? board.photos[0],
      face: way.face,
      turned: way.turned,
      board: way.board + 1,
      lengthMm: board.lengthMm,
      widthMm: board.widthMm,
      slideMm: way.shift * table.stepMm + 0,
      isImagined: board.isImagined,
      showsHeart: showsHeart(rules, way),
      planesTowards: planesTowards(rules, way),
    };
  });
  const joints = order.slice(1).map((below, i): ArrangedJoint => {
    const { v, cue } = jointBetween(table, ways[i], ways[i + 1]);
    const word = v === null ? null : visibilityWord(v);
    const grown = grownShare(table, ways[i], ways[i + 1]);
    return { above: order[i].photo, below: below.photo, v, cue, word, grown };
  });
  const totalCost = joints.reduce((sum, { v }) => sum + (v ?? 0) ** 3, 0);
  return {
    schema: 'seamgrain/arrange@1',
    order,
    joints,
    totalCost,
    exact: how === 'exact',
    laid,
    leastCost,
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
    notes: [
      ...table.notes,
      ...ruleNotes(table, rules, matched, joints, how),
      ...grownNotes(laid, totalCost, leastCost),
    ],
  };
}

/** The joint's figure against that inside a board: 1 runs on as there, 0 as strangers do. */
function grownShare(table: JointTable, above: BoardWay, below: BoardWay): number | null {
  if (!(table.ownGrown > 0) || above.shift !== below.shift) return null;
  return grownBetween(table, above, below) / table.ownGrown;
}

function grownNotes(
  laid: ArrangeResult['laid'],
  totalCost: number,
  leastCost: number | null,
): string[] {
  if (laid !== 'asGrown' || leastCost === null) return [];
  const least = `The least that any order shows is ${leastCost.toFixed(1)} (sum of V^3) against ${totalCost.toFixed(1)} here.`;
  return [
    `The figure says that these boards were one face: they lie as they grew. ${totalCost > leastCost + 0.1 ? least : 'No order shows noticeably less.'}`,
  ];
}
