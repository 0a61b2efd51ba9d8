import type { MatchedPair } from './arrangeRules.js';
import type { BoardWay } from './boardWay.js';
import type { JointTable } from './jointTable.js';
import type { MatchLikeness } from './matchLikeness.js';

/** How two boards lie when they are matched. */
export interface MatchedLie {
  readonly pair: MatchedPair;
  /** The likeness that decided which faces show and which end is which; null when none was read. */
  readonly likeness: MatchLikeness | null;
}

/** Finds how a resawn pair lies when matched: the faces and ends whose figure agrees best. */
export function matchedLie(table: JointTable, pair: MatchedPair): MatchedLie {
  const [p, q] = pair.boards;
  const candidates = table.likeness.filter(({ faces: [a, b], kind }) => {
    const boards = [a >> 1, b >> 1];
    return kind === pair.kind && boards.includes(p) && boards.includes(q);
  });
  const best = candidates.reduce<MatchLikeness | null>((a, b) => (a && a.r >= b.r ? a : b), null);
  return { pair, likeness: best };
}

/** Whether two neighbouring ways are the matched lie: right faces, right ends, no slide. */
export function isMatched({ likeness }: MatchedLie, a: BoardWay, b: BoardWay): boolean {
  if (likeness === null || a.shift !== b.shift) return false;
  const shown = [a, b].map(({ board, face }) => 2 * board + (face === 'B' ? 1 : 0));
  if (!likeness.faces.every((face) => shown.includes(face))) return false;
  return (a.turned === b.turned) === likeness.sameWay;
}
