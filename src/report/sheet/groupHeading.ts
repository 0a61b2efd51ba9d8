import type { Block } from './block.js';
import { moveMark } from './moveMark.js';
import type { SheetStyle } from './sheetStyle.js';
import { stackBlocks } from './stackBlocks.js';
import { textLines } from './textLines.js';

/** The head of a group of steps: what they have in common, and the cautions that hold for all. */
export function groupHeading(
  title: string,
  words: readonly string[],
  cautions: readonly string[],
  { widthPx, bodyPx, smallPx }: SheetStyle,
): Block {
  const barPx = 1.75 * bodyPx;
  const heading = textLines(title, {
    x: 0.6 * bodyPx,
    widthPx: widthPx - bodyPx,
    sizePx: 1.12 * bodyPx,
    bold: true,
    fill: 1,
  });
  const line = { x: 0, widthPx };
  const body = stackBlocks([
    ...words.map((text) => textLines(text, { ...line, sizePx: bodyPx })),
    ...cautions.map((text) => textLines(text, { ...line, sizePx: smallPx, isCaution: true })),
  ]);
  const pad = body.heightPx > 0 ? 0.35 * bodyPx : 0;
  return {
    heightPx: barPx + body.heightPx + 2 * pad,
    marks: [
      { kind: 'rect', x: 0, y: 0, width: widthPx, height: barPx, fill: 0.15 },
      ...heading.marks.map((mark) => moveMark(mark, 0, 0.2 * bodyPx)),
      ...body.marks.map((mark) => moveMark(mark, 0, barPx + pad)),
    ],
  };
}
