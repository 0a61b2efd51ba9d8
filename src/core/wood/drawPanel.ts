import { SeamgrainError } from '../errors.js';
import type { RgbImage } from '../image/rgbImage.js';
import type { Progress } from '../progress.js';
import { addPiece } from './addPiece.js';
import { createBoard } from './createBoard.js';
import { createPanelTruth } from './createPanelTruth.js';
import { drawSeamLines } from './drawSeamLines.js';
import { encodeSrgb } from './encodeSrgb.js';
import { paintPiece } from './paintPiece.js';
import type { PanelSpec } from './panelSpec.js';
import type { PanelTruth } from './panelTruth.js';
import { pieceBounds } from './pieceBounds.js';
import { ringProfile } from './ringProfile.js';
import { woodPalette } from './woodPalette.js';

/** A drawn panel and everything that is true of it. */
export interface DrawnPanel {
  readonly image: RgbImage;
  readonly truth: PanelTruth;
}

/**
 * Draws a panel of imagined wood, square on and in flat light, with its exact truth.
 *
 * @param spec boards, pieces and seams (builders: onePiecePanel, ripPanel, crosscutPanel, ...).
 * @param options.pxPerMm scale of the picture, 0.5 to 40 px/mm.
 * @param options.progress told after each piece.
 * @returns an sRGB picture of round(width x pxPerMm) by round(height x pxPerMm) px, and the truth.
 * @throws SeamgrainError when the size or scale cannot be drawn.
 */
export function drawPanel(
  spec: PanelSpec,
  options: { readonly pxPerMm: number; readonly progress?: Progress },
): DrawnPanel {
  const { pxPerMm, progress } = options;
  const width = Math.round(spec.widthMm * pxPerMm);
  const height = Math.round(spec.heightMm * pxPerMm);
  if (!(pxPerMm >= 0.5 && pxPerMm <= 40) || !(width >= 2 && height >= 2)) {
    throw new SeamgrainError(
      'cannotDo',
      `Cannot draw a panel of ${spec.widthMm} x ${spec.heightMm} mm at ${pxPerMm} px/mm.`,
      'Choose a scale of 0.5 to 40 px/mm and a panel of at least 2 px each way.',
    );
  }
  const boards = spec.boards.map(createBoard);
  const profiles = boards.map((board) =>
    ringProfile(board.field.rings, board.spec.setting, board.treeSeed ^ 0x9a0f),
  );
  const light = new Float32Array(3 * width * height);
  const covered = new Float32Array(width * height);
  const canvas = { width, height, pxPerMm, light, covered };
  spec.pieces.forEach((piece, index) => {
    const box = pieceBounds(piece.outline, pxPerMm, width, height);
    if (box.width === 0 || box.height === 0) return;
    const board = boards[piece.board]!;
    const painted = paintPiece(board, profiles[piece.board]!, piece, box, pxPerMm);
    addPiece(canvas, painted, woodPalette(board, piece.colourShift), piece.outline);
    progress?.((index + 1) / spec.pieces.length, `drew ${piece.name}`);
  });
  drawSeamLines(canvas, spec.seams);
  return {
    image: encodeSrgb(light, width, height),
    truth: createPanelTruth(spec, boards, profiles),
  };
}
