import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import type { ScoreFrame } from './scoreFrame.js';

const text = 'none found here';

/**
 * Words on the foot of a strip where its line has no piece: a bare foot would read as a joint that
 * disappears. Only where there is room for them.
 * @param seams the pieces of one line
 */
export function noneFoundWords(
  seams: readonly PlacedSeam[],
  baseY: number,
  { panel, scale, smallPx }: ScoreFrame,
  theme: Theme,
): Piece {
  const spans = seams
    .map(({ seam: { line } }) => [
      Math.min(line.x1Mm, line.x2Mm) * scale,
      Math.max(line.x1Mm, line.x2Mm) * scale,
    ])
    .sort((a, b) => a[0]! - b[0]!);
  const widthPx = textWidthPx(text, smallPx);
  const pieces: Piece[] = [];
  let freeFrom = 0;
  for (const [from, to] of [...spans, [panel.width, panel.width]]) {
    if (from! - freeFrom > widthPx + smallPx) {
      const x = panel.x + (freeFrom + from!) / 2;
      const fill = paint(theme, 'fill', 'quiet');
      const y = baseY - 0.35 * smallPx;
      pieces.push(textPiece({ x, y, text, sizePx: smallPx, anchor: 'middle', fill }));
    }
    freeFrom = Math.max(freeFrom, to!);
  }
  return joinPieces(pieces);
}
