import { wrapText } from '../draw/wrapText.js';
import type { Block } from './block.js';
import type { Grey, Mark } from './mark.js';

/** How a paragraph is set. */
export interface ParagraphStyle {
  readonly x: number;
  readonly widthPx: number;
  readonly sizePx: number;
  readonly bold?: boolean;
  readonly fill?: Grey;
  /** A warning triangle in front, the words indented behind it. */
  readonly isCaution?: boolean;
}

const leading = 1.28;

/** A paragraph broken into lines, from y = 0 down. */
export function textLines(text: string, style: ParagraphStyle): Block {
  const { x, widthPx, sizePx, bold = false, fill = 0, isCaution = false } = style;
  const indent = isCaution ? 1.45 * sizePx : 0;
  const lines = wrapText(text, sizePx, widthPx - indent, bold);
  const marks: Mark[] = lines.map((line, index) => ({
    kind: 'text',
    x: x + indent,
    y: sizePx + index * leading * sizePx,
    text: line,
    sizePx,
    bold,
    fill,
  }));
  return {
    heightPx: lines.length * leading * sizePx,
    marks: isCaution ? [...cautionSign(x, sizePx), ...marks] : marks,
  };
}

/** The triangle with its stroke and dot, drawn, because not every font has the sign. */
function cautionSign(x: number, sizePx: number): Mark[] {
  const wide = 1.15 * sizePx;
  const top = 0.08 * sizePx;
  const base = 1.08 * sizePx;
  const middle = x + wide / 2;
  return [
    {
      kind: 'polygon',
      points: [
        [middle, top],
        [x + wide, base],
        [x, base],
      ],
      fill: 0,
    },
    {
      kind: 'line',
      x1: middle,
      y1: top + 0.36 * sizePx,
      x2: middle,
      y2: top + 0.68 * sizePx,
      stroke: 1,
      strokePx: 0.13 * sizePx,
    },
    { kind: 'circle', x: middle, y: top + 0.84 * sizePx, r: 0.075 * sizePx, fill: 1 },
  ];
}
