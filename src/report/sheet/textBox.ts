import type { Label } from '../draw/piece.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { TextMark } from './mark.js';

/** Where a line of words stands, on the safe side for any font. */
export function textBox({ x, y, text, sizePx, bold = false, anchor = 'start' }: TextMark): Label {
  const width = textWidthPx(text, sizePx, bold);
  const left = anchor === 'start' ? x : anchor === 'middle' ? x - width / 2 : x - width;
  return { x: left, y: y - 0.93 * sizePx, width, height: 1.2 * sizePx, text };
}
