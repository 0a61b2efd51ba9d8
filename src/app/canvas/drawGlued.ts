import type { GluedPiece } from '../geometry/gluedPieces.js';
import type { ViewTransform } from '../geometry/viewTransform.js';
import type { Drawable } from '../images/drawableOf.js';

/** The shadow in an open gap. */
const gapColour = '#1d1915';

/**
 * Draws the face as glued over the right part of a canvas that shows the uncut panel.
 * @param share of the canvas's width that is drawn over, 0..1, from the right
 */
export function drawGlued(
  canvas: HTMLCanvasElement,
  { full, small }: Drawable,
  panelWidthMm: number,
  pieces: readonly GluedPiece[],
  view: ViewTransform,
  share: number,
): void {
  const drawing = canvas.getContext('2d');
  if (!drawing || share <= 0) return;
  const density = canvas.width / Math.max(1, canvas.clientWidth);
  const scale = view.pxPerMm * density;
  const bitmap = panelWidthMm * scale <= small.width * 1.05 ? small : full;
  const toBitmap = bitmap.width / panelWidthMm;
  const [left, top] = [view.x * density, view.y * density];
  const wipeX = canvas.width * (1 - share);
  drawing.save();
  drawing.beginPath();
  drawing.rect(wipeX, 0, canvas.width, canvas.height);
  drawing.clip();
  drawing.clearRect(wipeX, 0, canvas.width, canvas.height);
  drawing.imageSmoothingQuality = 'high';
  const strip = pieces.find(({ name }) => name === 'front');
  if (strip) {
    drawing.fillStyle = gapColour;
    const wide = panelWidthMm * scale;
    drawing.fillRect(left, top + strip.toY * scale, wide, strip.height * scale);
  }
  for (const { fromX, fromY, width, height, toX, toY } of pieces) {
    drawing.drawImage(
      bitmap,
      fromX * toBitmap,
      fromY * toBitmap,
      width * toBitmap,
      height * toBitmap,
      left + toX * scale,
      top + toY * scale,
      width * scale,
      height * scale,
    );
  }
  drawing.restore();
  drawing.fillStyle = '#fff';
  drawing.fillRect(wipeX - 2 * density, 0, 4 * density, canvas.height);
  drawing.fillStyle = '#111';
  drawing.fillRect(wipeX - 0.75 * density, 0, 1.5 * density, canvas.height);
}
