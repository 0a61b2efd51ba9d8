import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Theme } from '../draw/theme.js';
import type { ScoreFrame } from '../score/scoreFrame.js';
import { cutWords } from './cutWords.js';

/** Lines that stand as the rings of each cut do. */
export function cutPatterns(prefix: string): string {
  return cutWords
    .map(
      ({ name, lineDeg }) =>
        `<pattern id="${prefix}-${name}" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(${-lineDeg})"><rect width="7" height="1.3" fill="#161616" fill-opacity="0.32"/></pattern>`,
    )
    .join('');
}

/** The classes with their angles and shares. */
export function cutLegend(
  { cut }: EndgrainResult,
  topPx: number,
  { panel: box, smallPx, widthPx, marginPx }: ScoreFrame,
  theme: Theme,
  prefix: string,
): { readonly piece: Piece; readonly bottomPx: number } {
  const pieces: Piece[] = [];
  const side = 1.25 * smallPx;
  let [x, y] = [box.x, topPx];
  for (const { name, fromDeg, colour } of cutWords) {
    const share = cut ? `, ${Math.round(100 * cut[name])} % of the width` : '';
    const text = `${name} (${fromDeg} to ${fromDeg + 30} deg)${share}`;
    const width = side + 7 + textWidthPx(text, smallPx) + 22;
    if (x > box.x && x + width > widthPx - marginPx) [x, y] = [box.x, y + 1.7 * smallPx];
    const place = `x="${px(x)}" y="${px(y)}" width="${px(side)}" height="${px(side)}"`;
    pieces.push({
      svg: `<rect ${place} fill="${colour}"/><rect ${place} fill="url(#${prefix}-${name})"/>`,
      labels: [],
    });
    const fill = paint(theme, 'fill', 'ink');
    pieces.push(textPiece({ x: x + side + 7, y: y + smallPx, text, sizePx: smallPx, fill }));
    x += width;
  }
  return { piece: joinPieces(pieces), bottomPx: y + 1.7 * smallPx };
}
