import type { ArrangeResult } from '../../core/results/arrangeResult.js';

/** Where a board lies on the panel drawn, mm from its upper left corner. */
export interface LaidBoard {
  readonly leftMm: number;
  readonly topMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** The boards one below the other as slid, and the size of all together. */
export function arrangedLayout({ order }: Pick<ArrangeResult, 'order'>): {
  readonly boards: readonly LaidBoard[];
  readonly lengthMm: number;
  readonly widthMm: number;
} {
  const lefts = order.map(({ slideMm, lengthMm }) => slideMm - lengthMm / 2);
  const left = Math.min(...lefts);
  const right = Math.max(...order.map(({ lengthMm }, i) => lefts[i]! + lengthMm));
  let topMm = 0;
  const boards = order.map(({ lengthMm, widthMm }, i) => {
    const board = { leftMm: lefts[i]! - left, topMm, lengthMm, widthMm };
    topMm += widthMm;
    return board;
  });
  return { boards, lengthMm: right - left, widthMm: topMm };
}
