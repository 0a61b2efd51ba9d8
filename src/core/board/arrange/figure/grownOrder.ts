import { ciede2000 } from '../../../colour/ciede2000.js';
import type { BoardWay } from '../boardWay.js';
import { edgesBetween, type JointTable, pairIndex } from '../jointTable.js';

/**
 * Boards are taken for one face when the figure across their joints speaks for it by this share of
 * what it says inside a board. tests/bench/boards.ts: 1.0 to 1.5 for one face, mixed boards 0 to
 * 0.6, straight quartered boards that look alike up to 0.8.
 */
const leastShare = 0.7;
/** Neighbours of one face do not differ in colour by more than this, CIEDE2000 (assumption). */
const mostColourStep = 4;

/** How far the figure speaks for two neighbours having been one board, log ratio; 0 unread. */
export function grownBetween(table: JointTable, above: BoardWay, below: BoardWay): number {
  if (above.shift !== below.shift) return Number.NEGATIVE_INFINITY;
  const value = table.grown[pairIndex(table.boards.length, ...edgesBetween(above, below))];
  return Number.isNaN(value) ? 0 : value;
}

/** Whether boards laid in this order look like one face that was cut up. */
export function isOneFace(table: JointTable, ways: readonly BoardWay[]): boolean {
  const joints = ways.slice(1).map((below, i) => [ways[i], below] as const);
  const share =
    joints.reduce((sum, [a, b]) => sum + grownBetween(table, a, b), 0) /
    (joints.length * table.ownGrown);
  const isOneColour = joints.every(([a, b]) => {
    const [one, two] = edgesBetween(a, b).map((edge) => table.edgeColour[edge]);
    return one && two && ciede2000(one, two) <= mostColourStep;
  });
  return table.ownGrown > 0 && share >= leastShare && isOneColour;
}
