import type { Box } from '../draw/box.js';
import type { DrawingFrame } from './drawingFrame.js';

/** The bands that turn to dust, to scale, at least a pixel wide. */
export function kerfBoxes({ layout, panel, pxPerMm }: DrawingFrame): Box[] {
  return layout.cuts.map(({ kind, band, strip }) => {
    const wide = Math.max(1, (band.toMm - band.fromMm) * pxPerMm);
    const at = band.fromMm * pxPerMm;
    if (kind === 'rip') return { x: panel.x, y: panel.y + at, width: panel.width, height: wide };
    const piece = layout.pieces.find((one) => one.strip === strip)!;
    return {
      x: panel.x + at,
      y: panel.y + piece.onPanel.yMm * pxPerMm,
      width: wide,
      height: piece.widthMm * pxPerMm,
    };
  });
}
