import type { LayoutStep } from '../../core/results/layoutResult.js';
import type { Block } from './block.js';
import type { SheetStyle } from './sheetStyle.js';
import { stackBlocks } from './stackBlocks.js';
import { textLines } from './textLines.js';

const paperTitles: Readonly<Record<LayoutStep['kind'], string>> = {
  prepare: 'Prepare',
  mark: 'Mark',
  rip: 'Rip',
  dress: 'Dress',
  crosscut: 'Crosscut',
  dryClamp: 'Clamp dry',
  glue: 'Glue',
  flatten: 'Flatten',
  square: 'Square',
  fit: 'Fit front',
};

/** A step as it stands on paper. */
export interface PaperStep {
  readonly kind: LayoutStep['kind'];
  readonly words: string;
  readonly cautions: readonly string[];
}

/** Steps that are no cuts: title, words, cautions beside them. */
export function stepsBlock(steps: readonly PaperStep[], style: SheetStyle): Block {
  const { widthPx, smallPx } = style;
  const titlePx = 7 * smallPx;
  const gutter = 0.8 * smallPx;
  const rows = steps.map(({ kind, words, cautions }): Block => {
    const wordsPx = (cautions.length > 0 ? 0.66 : 1) * (widthPx - titlePx);
    const cautionX = titlePx + wordsPx + gutter;
    const title = { x: 0, widthPx: titlePx, sizePx: smallPx, bold: true };
    const columns = [
      textLines(paperTitles[kind], title),
      textLines(words, { x: titlePx, widthPx: wordsPx, sizePx: smallPx }),
      stackBlocks(
        cautions.map((text) =>
          textLines(text, {
            x: cautionX,
            widthPx: widthPx - cautionX,
            sizePx: smallPx,
            isCaution: true,
          }),
        ),
      ),
    ];
    return {
      heightPx: Math.max(...columns.map(({ heightPx }) => heightPx)) + 0.15 * smallPx,
      marks: columns.flatMap(({ marks }) => marks),
    };
  });
  return stackBlocks(rows);
}
