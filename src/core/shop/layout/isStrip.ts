import type { ExactPiece, ExactStrip } from './exactLayout.js';

/** Whether a course of the layout is a strip that gets crosscut. */
export function isStrip(piece: ExactPiece | ExactStrip): piece is ExactStrip {
  return piece.kind === 'strip';
}
