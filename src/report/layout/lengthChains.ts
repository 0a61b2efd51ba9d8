import type { LayoutPiece } from '../../core/results/layoutResult.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Mark } from '../sheet/mark.js';
import { sizeText } from '../sheet/sizeText.js';
import { distinctStrips } from './distinctStrips.js';
import type { DrawingFrame } from './drawingFrame.js';
import { spreadLabels } from './spreadLabels.js';

/** Crosscut lengths under the panel, one row for each kind of strip. */
export function lengthChains(frame: DrawingFrame): Mark[] {
  const { layout, panel, padPx, sizePx } = frame;
  const top = panel.y + panel.height + padPx + 1.9 * sizePx;
  return distinctStrips(layout).flatMap((pieces, row) =>
    chain(frame, pieces, top + row * 2.3 * sizePx),
  );
}

function chain(frame: DrawingFrame, pieces: readonly LayoutPiece[], top: number): Mark[] {
  const { layout, panel, bounds, pxPerMm, sizePx } = frame;
  const spans = pieces.map(({ onPanel, lengthMm }) => {
    const from = panel.x + onPanel.xMm * pxPerMm;
    return { from, to: from + lengthMm * pxPerMm };
  });
  const middles = spans.map(({ from, to }) => (from + to) / 2);
  const texts = pieces.map(({ asSet }) => sizeText(asSet.lengthMm, layout.rule));
  const sized = chainType(texts, sizePx, bounds.width);
  const places = spreadLabels(middles, sized.widths, bounds.x, bounds.x + bounds.width)!;
  return spans.flatMap(({ from, to }, index): Mark[] => {
    const line = { kind: 'line' as const, stroke: 0, strokePx: 0.8 };
    return [
      { ...line, x1: from, y1: top, x2: from, y2: top + 8 },
      { ...line, x1: to, y1: top, x2: to, y2: top + 8 },
      { ...line, x1: from, y1: top + 4, x2: to, y2: top + 4 },
      { ...line, x1: middles[index]!, y1: top + 4, x2: places[index]!, y2: top + 0.75 * sizePx },
      {
        kind: 'text',
        x: places[index]!,
        y: top + 1.75 * sizePx,
        text: texts[index]!,
        sizePx: sized.sizePx,
        bold: true,
        anchor: 'middle',
      },
    ];
  });
}

/** Smaller type where a row of many short pieces would not fit otherwise. */
function chainType(texts: readonly string[], sizePx: number, roomPx: number) {
  const widthsAt = (size: number) => texts.map((text) => textWidthPx(text, size, true) + 8);
  const total = widthsAt(sizePx).reduce((sum, width) => sum + width, 0);
  const fitted = total <= roomPx ? sizePx : (0.97 * sizePx * roomPx) / total;
  return { sizePx: fitted, widths: widthsAt(fitted) };
}
