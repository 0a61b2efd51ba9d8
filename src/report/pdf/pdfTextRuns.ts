import { fractionParts } from '../draw/fractionParts.js';
import { fractionScale } from '../draw/fractionScale.js';
import { helveticaWidths } from './helveticaWidths.js';
import { winAnsiCodes } from './winAnsiCodes.js';

/** A stretch of text at one size and height; x from the start of the line, px. */
export interface PdfTextRun {
  readonly codes: readonly number[];
  readonly sizePx: number;
  readonly x: number;
  /** Above the baseline, px. */
  readonly risePx: number;
}

/** A line with its fractions set as fractions, and how wide it is. */
export function pdfTextRuns(
  text: string,
  sizePx: number,
  bold: boolean,
): { readonly runs: readonly PdfTextRun[]; readonly widthPx: number } {
  const runs: PdfTextRun[] = [];
  let x = 0;
  const add = (part: string, size: number, risePx: number) => {
    const codes = winAnsiCodes(part);
    runs.push({ codes, sizePx: size, x, risePx });
    x += codes.reduce((sum, code) => sum + widthOf(code, bold), 0) * size;
  };
  for (const { text: plain, fraction } of fractionParts(text)) {
    if (!fraction) {
      add(plain, sizePx, 0);
      continue;
    }
    add(fraction.above, fractionScale * sizePx, 0.3 * sizePx);
    add('/', sizePx, 0);
    add(fraction.below, fractionScale * sizePx, 0);
  }
  return { runs, widthPx: x };
}

/** In parts of the type size; accented letters and signs are taken as wide as a figure. */
function widthOf(code: number, bold: boolean): number {
  return (helveticaWidths[bold ? 'bold' : 'regular'][code - 32] ?? 556) / 1000;
}
