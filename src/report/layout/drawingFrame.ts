import type { LayoutResult } from '../../core/results/layoutResult.js';
import type { Box } from '../draw/box.js';

/** Where the panel stands in the drawing and how large. */
export interface DrawingFrame {
  readonly layout: LayoutResult;
  /** Whole drawing. */
  readonly bounds: Box;
  /** The panel. */
  readonly panel: Box;
  readonly pxPerMm: number;
  /** Height above and below the panel that belongs to the labels beside it. */
  readonly padPx: number;
  /** Type size of dimensions and names. */
  readonly sizePx: number;
}

/**
 * Fits the panel between the bands that its dimensions need.
 * @param chains rows of dimensions under the panel
 * @param extraPadPx more room above and below the panel, for names that found none
 */
export function drawingFrame(
  layout: LayoutResult,
  widthPx: number,
  heightPx: number,
  sizePx: number,
  chains: number,
  extraPadPx: number,
): DrawingFrame {
  const left = 3 * sizePx;
  const right = 9.5 * sizePx;
  const top = 1.9 * sizePx;
  const bottom = (1.9 + 2.3 * chains) * sizePx;
  const room = {
    width: widthPx - left - right,
    height: Math.max(24, heightPx - top - bottom - 2 * extraPadPx),
  };
  const { lengthMm, widthMm } = layout.panel;
  const rips = layout.cuts.filter(({ kind }) => kind === 'rip').length;
  // A row for each width right of the panel and each number left of it, even beside a low panel.
  const rowsPx = Math.max((rips + 1) * 1.5, rips * 2.1) * sizePx;
  const pxPerMm = Math.min(room.width / lengthMm, room.height / widthMm);
  const width = lengthMm * pxPerMm;
  const height = widthMm * pxPerMm;
  const padPx = Math.max(extraPadPx, (rowsPx - height) / 2);
  return {
    layout,
    bounds: { x: 0, y: 0, width: widthPx, height: top + height + 2 * padPx + bottom },
    panel: { x: left + (room.width - width) / 2, y: top + padPx, width, height },
    padPx,
    pxPerMm,
    sizePx,
  };
}
