import type { LayoutResult } from '../../core/results/layoutResult.js';
import { textWidthPx } from '../draw/textWidthPx.js';
import type { Block } from '../sheet/block.js';
import type { Mark } from '../sheet/mark.js';
import { distinctStrips } from './distinctStrips.js';
import { type DrawingFrame, drawingFrame } from './drawingFrame.js';
import { lengthChains } from './lengthChains.js';
import { panelShapes } from './panelShapes.js';
import { piecesAndNumbers } from './piecesAndNumbers.js';
import { widthChain } from './widthChain.js';
import { witnessTicks } from './witnessTicks.js';

/**
 * The layout to scale: pieces and kerfs on the panel, widths at its right, lengths under it,
 * numbers of the cuts, witness marks, reference edge and end.
 * @param widthPx room
 * @param heightPx room
 * @param sizePx type size of the dimensions
 */
export function layoutDrawing(
  layout: LayoutResult,
  widthPx: number,
  heightPx: number,
  sizePx: number,
): Block {
  const chains = distinctStrips(layout).length;
  const mostPads = 10;
  for (let pads = 0; ; pads++) {
    const frame = drawingFrame(layout, widthPx, heightPx, sizePx, chains, 1.6 * pads * sizePx);
    const { marks, isComplete } = piecesAndNumbers(frame);
    if (!isComplete && pads < mostPads) continue;
    return {
      heightPx: frame.bounds.height,
      marks: [
        ...panelShapes(frame),
        ...witnessTicks(frame),
        ...marks,
        ...widthChain(frame),
        ...lengthChains(frame),
        ...captions(frame),
      ],
    };
  }
}

/** Which edge meets the fence and which end the stop, each at its side. */
function captions({ layout, panel, padPx, bounds, sizePx }: DrawingFrame): Mark[] {
  const names = layout.cuts.map(({ reference }) => reference);
  const above = panel.y - padPx - 0.7 * sizePx;
  const below = panel.y + panel.height + padPx + 1.35 * sizePx;
  const isUpper = names.includes('upper edge');
  const isLeft = names.includes('left end');
  const text = (words: string, y: number, size: number, atLeft = true): Mark => {
    const width = textWidthPx(words, size);
    const wished = atLeft ? panel.x : panel.x + panel.width - width;
    const x = Math.max(0, Math.min(wished, bounds.width - width));
    return { kind: 'text', x, y, text: words, sizePx: size };
  };
  return [
    text('reference edge: on the fence at every rip', isUpper ? above : below, 0.9 * sizePx),
    text('reference end: at the stop', isUpper ? below : above, 0.9 * sizePx, isLeft),
  ];
}
