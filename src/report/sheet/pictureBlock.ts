import type { LayoutResult } from '../../core/results/layoutResult.js';
import type { Block } from './block.js';
import type { JpegPicture, Mark } from './mark.js';

/** The panel's photograph with the cuts drawn over it, white under black so that they show on any wood. */
export function pictureBlock(
  layout: LayoutResult,
  picture: JpegPicture,
  x: number,
  widthPx: number,
  tallestPx: number,
): Block {
  const scale = Math.min(widthPx / picture.widthPx, tallestPx / picture.heightPx);
  const width = picture.widthPx * scale;
  const height = picture.heightPx * scale;
  const perMmX = width / layout.panel.lengthMm;
  const perMmY = height / layout.panel.widthMm;
  const lines = layout.cuts.map(({ kind, band, strip }) => {
    const at = (band.fromMm + band.toMm) / 2;
    if (kind === 'rip') {
      return { x1: x, y1: 1 + at * perMmY, x2: x + width, y2: 1 + at * perMmY };
    }
    const piece = layout.pieces.find((one) => one.strip === strip)!;
    const top = 1 + piece.onPanel.yMm * perMmY;
    const across = x + at * perMmX;
    return { x1: across, y1: top, x2: across, y2: top + piece.widthMm * perMmY };
  });
  const drawn = (stroke: number, strokePx: number) =>
    lines.map((line): Mark => ({ kind: 'line', ...line, stroke, strokePx }));
  return {
    heightPx: height + 2,
    marks: [
      { kind: 'image', x, y: 1, width, height, picture },
      ...drawn(1, 2.6),
      ...drawn(0, 1),
      { kind: 'rect', x, y: 1, width, height, stroke: 0.3, strokePx: 0.8 },
    ],
  };
}
