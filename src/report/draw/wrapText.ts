import { keepTogether } from './keepTogether.js';
import { textWidthPx } from './textWidthPx.js';

/**
 * Breaks a text into lines that fit, keeping a number with its fraction and its unit.
 * @param widthPx room, px
 */
export function wrapText(text: string, sizePx: number, widthPx: number, bold = false): string[] {
  const lines: string[] = [];
  for (const word of keepTogether(text).split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (
      lines.length > 0 &&
      textWidthPx(longer.replaceAll('\u00a0', ' '), sizePx, bold) <= widthPx
    ) {
      lines[lines.length - 1] = longer;
    } else {
      lines.push(word);
    }
  }
  return lines.map((line) => line.replaceAll('\u00a0', ' '));
}
