import type { Mark } from '../sheet/mark.js';
import { sizeText } from '../sheet/sizeText.js';
import type { DrawingFrame } from './drawingFrame.js';
import { spreadLabels } from './spreadLabels.js';

/** Sawn widths of rails and strips, right of the panel, as the tape shows them after ripping. */
export function widthChain({ layout, panel, padPx, pxPerMm, sizePx }: DrawingFrame): Mark[] {
  const sawn = new Map(
    layout.cuts
      .filter(({ kind }) => kind === 'rip')
      .flatMap(({ makesAsSet }) => makesAsSet.map(({ name, widthMm }) => [name, widthMm] as const)),
  );
  const courses = layout.pieces.filter(
    (piece, index, all) =>
      piece.strip === null || all.findIndex(({ strip }) => strip === piece.strip) === index,
  );
  const x = panel.x + panel.width + 8;
  const spans = courses.map(({ onPanel, widthMm }) => {
    const from = panel.y + onPanel.yMm * pxPerMm;
    return { from, to: from + widthMm * pxPerMm };
  });
  const middles = spans.map(({ from, to }) => (from + to) / 2);
  const rowPx = 1.4 * sizePx;
  const rows = spreadLabels(
    middles,
    middles.map(() => rowPx),
    panel.y - padPx,
    panel.y + panel.height + padPx,
  );
  return spans.flatMap(({ from, to }, index): Mark[] => {
    const piece = courses[index]!;
    const mm = sawn.get(piece.strip ?? piece.name) ?? piece.widthMm;
    const row = rows?.[index] ?? middles[index]!;
    const line = { kind: 'line' as const, stroke: 0, strokePx: 0.8 };
    return [
      { ...line, x1: x, y1: from, x2: x + 8, y2: from },
      { ...line, x1: x, y1: to, x2: x + 8, y2: to },
      { ...line, x1: x + 4, y1: from, x2: x + 4, y2: to },
      { ...line, x1: x + 4, y1: middles[index]!, x2: x + 18, y2: row },
      {
        kind: 'text',
        x: x + 21,
        y: row + 0.36 * sizePx,
        text: sizeText(mm, layout.rule),
        sizePx,
        bold: true,
      },
    ];
  });
}
