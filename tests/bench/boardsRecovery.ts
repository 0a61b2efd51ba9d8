import { arrangeBoards } from '../../src/core/board/arrange/arrangeBoards.js';
import { defaultArrangeOptions } from '../../src/core/board/arrange/arrangeOptions.js';
import { noRules } from '../../src/core/board/arrange/arrangeRules.js';
import { readJointTable } from '../../src/core/board/arrange/readJointTable.js';
import type { ArrangeResult } from '../../src/core/results/arrangeResult.js';
import type { WoodCut } from '../../src/core/wood/woodSetting.js';
import { type BoardSet, oneFaceSet } from './boardSets.js';

/** What jointing (per edge) and the saw take between boards that were one face, mm. */
export interface Loss {
  readonly jointMm: number;
  readonly sawnMm: number;
}

/** One face cut up and laid again. */
export interface Recovered {
  readonly name: string;
  readonly cut: WoodCut;
  readonly isRight: boolean;
  /** Laid as grown, or taken for strangers. */
  readonly laid: ArrangeResult['laid'];
  /** Whether least V alone finds the true order. */
  readonly isRightByV: boolean;
  readonly cost: number;
  readonly leastCost: number;
}

/** Cuts one drawn face up, shuffles it and has it laid again. */
export function recoverSet(seed: number, cut: WoodCut, loss: Loss, lengthMm = 900): Recovered {
  const set = oneFaceSet(seed, cut, { lengthMm, pxPerMm: 5, lostMm: loss.sawnMm });
  const options = { ...defaultArrangeOptions, jointMm: loss.jointMm, kerfMm: loss.sawnMm };
  const table = readJointTable(set.boards, options);
  const grown = arrangeBoards(table, noRules);
  const least = arrangeBoards(table, { ...noRules, asGrown: false });
  return {
    name: set.name,
    cut,
    isRight: isTrueOrder(grown, set),
    laid: grown.laid,
    isRightByV: isTrueOrder(least, set),
    cost: grown.totalCost,
    leastCost: least.totalCost,
  };
}

/** Order and every way right, or the whole panel turned half round. */
export function isTrueOrder(
  { order }: ArrangeResult,
  { strip, turned }: Pick<BoardSet, 'strip' | 'turned'>,
): boolean {
  const laid = order.map(({ board, turned: now }) => ({
    strip: strip[board - 1]!,
    // Turned by the saw's shuffle and by the order: both together bring it back.
    upright: now === turned[board - 1],
  }));
  const straight = laid.every((board, i) => board.strip === i && board.upright);
  const back = laid.every((board, i) => board.strip === laid.length - 1 - i && !board.upright);
  return straight || back;
}
