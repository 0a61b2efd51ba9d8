import { arrangeBoards } from '../../src/core/board/arrange/arrangeBoards.js';
import { defaultArrangeOptions } from '../../src/core/board/arrange/arrangeOptions.js';
import { noRules } from '../../src/core/board/arrange/arrangeRules.js';
import type { BoardWay } from '../../src/core/board/arrange/boardWay.js';
import { type JointTable, jointBetween } from '../../src/core/board/arrange/jointTable.js';
import { readJointTable } from '../../src/core/board/arrange/readJointTable.js';
import { mixedSet } from './boardSets.js';

/** Boards from different trees: what was chosen against every order there is. */
export interface Exactness {
  readonly boards: number;
  readonly isTwoFaced: boolean;
  readonly cost: number;
  readonly bruteCost: number;
  /** Taken for one face that was cut up: wrong. */
  readonly isTakenForOne: boolean;
}

/** Lays boards of different trees and tries every order and way by counting through them. */
export function exactOnMixed(seed: number, count: number, isTwoFaced: boolean): Exactness {
  const boards = mixedSet(seed, count, { lengthMm: 400, pxPerMm: 5 }, isTwoFaced);
  const table = readJointTable(boards, { ...defaultArrangeOptions, jointMm: 0.4 });
  const result = arrangeBoards(table, noRules);
  return {
    boards: count,
    isTwoFaced,
    cost: result.totalCost,
    bruteCost: leastOfAll(table),
    isTakenForOne: result.laid === 'asGrown',
  };
}

/** The least sum of V^3 over all orders, faces and turns, without sliding, by trying them all. */
export function leastOfAll(table: JointTable): number {
  const waysOf = table.boards.map(({ photos }, board): BoardWay[] =>
    (photos[1] === null ? (['A'] as const) : (['A', 'B'] as const)).flatMap((face) =>
      [false, true].map((turned) => ({ board, face, turned, shift: 0 })),
    ),
  );
  let least = Number.POSITIVE_INFINITY;
  const lay = (last: BoardWay | null, left: readonly number[], sum: number) => {
    if (left.length === 0) least = Math.min(least, sum);
    for (const board of left) {
      const rest = left.filter((other) => other !== board);
      for (const way of waysOf[board]!) {
        lay(way, rest, last ? sum + (jointBetween(table, last, way).v ?? 1) ** 3 : 0);
      }
    }
  };
  lay(
    null,
    table.boards.map((_, i) => i),
    0,
  );
  return least;
}
