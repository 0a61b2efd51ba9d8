import type { PanelResult } from '../../core/results/scoreResult.js';
import type { Box } from '../draw/box.js';
import { type ScoreSizes, scoreSizes } from './scoreSizes.js';

/** Where the parts of a score's picture stand and how large its marks are, px. */
export interface ScoreFrame extends ScoreSizes {
  readonly widthPx: number;
  readonly panel: Box;
  /** Drawn px per mm of the panel. */
  readonly scale: number;
  /** One narrow strip beside the panel per column of crosscuts. */
  readonly rails: readonly Box[];
}

/**
 * Lays out the picture: the panel as large as the width allows, to one scale.
 * @param wantedPx width of the whole picture, px
 * @param topPx where the panel may begin
 * @param railCount columns of crosscuts
 */
export function scoreFrame(
  panelMm: PanelResult,
  wantedPx: number,
  topPx: number,
  railCount: number,
): ScoreFrame {
  const size = scoreSizes(wantedPx);
  const { marginPx, railStepPx, railGapPx } = size;
  const railPx = 5 * railStepPx;
  const railsPx = railCount === 0 ? 0 : railCount * (railPx + railGapPx);
  const roomPx = wantedPx - 2 * marginPx - railsPx;
  const tallestPx = (wantedPx < 560 ? 1.5 : 0.75) * wantedPx;
  const scale = Math.min(roomPx / panelMm.widthMm, tallestPx / panelMm.heightMm);
  const panel = {
    x: marginPx,
    y: topPx,
    width: panelMm.widthMm * scale,
    height: panelMm.heightMm * scale,
  };
  const rails = Array.from({ length: railCount }, (_, index) => ({
    x: panel.x + panel.width + railGapPx + index * (railPx + railGapPx),
    y: panel.y,
    width: railPx,
    height: panel.height,
  }));
  // A tall, narrow panel leaves no empty half page beside it.
  const usedPx = 2 * marginPx + panel.width + railsPx;
  return { ...size, widthPx: Math.min(wantedPx, Math.max(640, usedPx)), panel, scale, rails };
}
