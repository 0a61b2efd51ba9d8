import type { Block } from './block.js';
import type { SheetInput } from './sheetInput.js';
import type { SheetStyle } from './sheetStyle.js';
import { sizeText } from './sizeText.js';
import { stackBlocks } from './stackBlocks.js';
import { textLines } from './textLines.js';

/** What is made of what, with which saw; in a box what makes it unsafe. */
export function headerBlock({ layout, title }: SheetInput, style: SheetStyle): Block {
  const { rule, openings, panel, needs, spare, kerfMm, dressMm, trimMm, trimEndsMm } = layout;
  const at = (mm: number) => sizeText(mm, rule);
  const size = `${at(openings[0]!.frontLengthMm)} x ${at(openings[0]!.frontWidthMm)}`;
  const fronts =
    openings.length === 1 ? `Front ${size}` : `${openings.length} fronts, first ${size}`;
  const heading = title ?? `${fronts} out of ${at(panel.lengthMm)} x ${at(panel.widthMm)}`;
  const facts = [
    ...(title ? [fronts] : []),
    `kerf ${at(kerfMm)}`,
    `dressing ${at(dressMm)} an edge`,
    trimEndsMm === trimMm
      ? `trim ${at(trimMm)} an edge`
      : `trim ${at(trimMm)} an edge, ${at(trimEndsMm)} an end`,
    `needs ${at(needs.lengthMm)} x ${at(needs.widthMm)}`,
    `spare ${at(spare.lengthMm)}, ${at(spare.widthMm)}`,
  ];
  const line = { x: 0, widthPx: style.widthPx };
  const blocks = [
    textLines(heading, { ...line, sizePx: 1.6 * style.bodyPx, bold: true }),
    textLines(facts.join('; '), { ...line, sizePx: style.bodyPx }),
  ];
  if (!layout.safety.canBeCut) blocks.push(warningBox(layout.safety.problems, style));
  return stackBlocks(blocks, 0.3 * style.bodyPx);
}

function warningBox(problems: readonly string[], style: SheetStyle): Block {
  const inset = 0.7 * style.bodyPx;
  const inner = stackBlocks([
    textLines('Not safe on the saw as it stands', {
      x: inset,
      widthPx: style.widthPx - 2 * inset,
      sizePx: 1.25 * style.bodyPx,
      bold: true,
      isCaution: true,
    }),
    ...problems.map((problem) =>
      textLines(problem, {
        x: inset,
        widthPx: style.widthPx - 2 * inset,
        sizePx: style.bodyPx,
      }),
    ),
  ]);
  const heightPx = inner.heightPx + 1.2 * inset;
  const moved = stackBlocks([{ heightPx: 0.6 * inset, marks: [] }, inner]);
  return {
    heightPx,
    marks: [
      {
        kind: 'rect',
        x: 1.5,
        y: 1.5,
        width: style.widthPx - 3,
        height: heightPx - 3,
        stroke: 0,
        strokePx: 3,
      },
      ...moved.marks,
    ],
  };
}
