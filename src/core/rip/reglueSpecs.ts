import { type CutLoss, type FrontPlace, type PieceSlides, ripLossMm } from './frontCut.js';
import type { ReglueSpec } from './reglue.js';

/**
 * A panel ripped at several places and glued up again, nothing slid.
 *
 * @param ripsMm middles of what is lost, mm from the top, any order.
 */
export function reglueRips(
  panel: { readonly widthMm: number; readonly heightMm: number },
  ripsMm: readonly number[],
  loss: CutLoss,
): ReglueSpec {
  const lossMm = ripLossMm(loss);
  const sorted = [...ripsMm].sort((a, b) => a - b);
  const tops = [0, ...sorted.map((y) => y + lossMm / 2)];
  const bottoms = [...sorted.map((y) => y - lossMm / 2), panel.heightMm];
  return {
    widthMm: panel.widthMm,
    heightMm: panel.heightMm - lossMm * sorted.length,
    moves: tops.map((y1Mm, i) => ({
      ...{ x1Mm: 0, x2Mm: panel.widthMm, y1Mm, y2Mm: bottoms[i] },
      ...{ toXMm: 0, toYMm: y1Mm - lossMm * i },
    })),
  };
}

/**
 * A panel with a front cut out of it, glued up again about its opening, the trimmed front in it.
 * Ends are trimmed flush, to the length that all pieces share.
 *
 * @param revealMm trimmed off every edge of the front.
 */
export function reglueFront(
  panel: { readonly widthMm: number; readonly heightMm: number },
  front: FrontPlace,
  loss: CutLoss,
  slides: PieceSlides,
  revealMm: number,
): ReglueSpec {
  const { xMm, yMm, widthMm, heightMm } = front;
  const { kerfMm } = loss;
  const lossMm = ripLossMm(loss);
  const { startMm, endMm } = flushEnds(panel.widthMm, slides);
  const piece = (
    x1Mm: number,
    x2Mm: number,
    y1Mm: number,
    y2Mm: number,
    slide: number,
    up: number,
  ) => ({
    ...{ x1Mm, x2Mm, y1Mm, y2Mm },
    ...{ toXMm: x1Mm + slide - startMm, toYMm: y1Mm - up },
  });
  const [right, bottom] = [xMm + widthMm, yMm + heightMm];
  return {
    widthMm: endMm - startMm,
    heightMm: panel.heightMm - 2 * lossMm,
    moves: [
      piece(0, panel.widthMm, 0, yMm - lossMm, slides.upper, 0),
      piece(0, xMm - kerfMm, yMm, bottom, slides.left, lossMm),
      piece(xMm + revealMm, right - revealMm, yMm + revealMm, bottom - revealMm, 0, lossMm),
      piece(right + kerfMm, panel.widthMm, yMm, bottom, slides.right, lossMm),
      piece(0, panel.widthMm, bottom + lossMm, panel.heightMm, slides.lower, 2 * lossMm),
    ],
  };
}

/** From where to where all pieces reach after sliding, mm on the uncut panel. */
export function flushEnds(
  lengthMm: number,
  { left, right, upper, lower }: PieceSlides,
): { readonly startMm: number; readonly endMm: number } {
  return {
    startMm: Math.max(0, left, upper, lower),
    endMm: lengthMm + Math.min(0, right, upper, lower),
  };
}
