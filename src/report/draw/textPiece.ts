import type { Box } from './box.js';
import { escapeXml } from './escapeXml.js';
import { fractionParts } from './fractionParts.js';
import { fractionScale } from './fractionScale.js';
import type { Piece } from './piece.js';
import { px } from './px.js';
import { textWidthPx } from './textWidthPx.js';

/** How a line of text is set. */
export interface TextStyle {
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly text: string;
  readonly sizePx: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  /** Fill as SVG attributes, from `paint` or plain. */
  readonly fill: string;
}

/** One line of text with its fractions set as fractions, and the box it takes. */
export function textPiece(style: TextStyle): Piece {
  const { x, y, text, sizePx, anchor = 'start', bold = false, fill } = style;
  const width = textWidthPx(text, sizePx, bold);
  const left = anchor === 'start' ? x : anchor === 'middle' ? x - width / 2 : x - width;
  const box: Box = { x: left, y: y - 0.93 * sizePx, width, height: 1.2 * sizePx };
  const weight = bold ? ' font-weight="600"' : '';
  const align = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const at = `x="${px(x)}" y="${px(y)}" font-size="${px(sizePx)}"${weight}${align}`;
  return { svg: `<text ${at} ${fill}>${spans(text, sizePx)}</text>`, labels: [{ ...box, text }] };
}

/** The numerator raised, the denominator on the line, both smaller; copied out it is still 3/8. */
function spans(text: string, sizePx: number): string {
  const small = `font-size="${px(fractionScale * sizePx)}"`;
  const rise = px(0.3 * sizePx);
  return fractionParts(text)
    .map(({ text: plain, fraction }) => {
      if (!fraction) return escapeXml(plain);
      return `<tspan ${small} dy="-${rise}">${fraction.above}</tspan><tspan dy="${rise}">/</tspan><tspan ${small}>${fraction.below}</tspan>`;
    })
    .join('');
}
