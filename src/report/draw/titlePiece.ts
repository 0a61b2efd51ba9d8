import { joinPieces } from './joinPieces.js';
import { paint } from './paint.js';
import type { Piece } from './piece.js';
import { textPiece } from './textPiece.js';
import type { Theme } from './theme.js';
import { wrapText } from './wrapText.js';

const topPx = 14;
const lineHeight = 1.35;

/** The answer as a bold sentence over a picture, wrapped to its width, and where it ends. */
export function titlePiece(
  headline: string,
  frame: { readonly titlePx: number; readonly marginPx: number; readonly widthPx: number },
  theme: Theme,
): { readonly piece: Piece; readonly bottomPx: number } {
  const { titlePx: sizePx, marginPx, widthPx } = frame;
  const fill = paint(theme, 'fill', 'ink');
  const lines = wrapText(headline, sizePx, widthPx - 2 * marginPx, true);
  const pieces = lines.map((text, i) =>
    textPiece({
      x: marginPx,
      y: topPx + sizePx + i * lineHeight * sizePx,
      text,
      sizePx,
      bold: true,
      fill,
    }),
  );
  return { piece: joinPieces(pieces), bottomPx: topPx + lines.length * lineHeight * sizePx };
}
