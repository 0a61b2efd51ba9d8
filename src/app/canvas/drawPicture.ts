import type { ViewTransform } from '../geometry/viewTransform.js';
import type { Drawable } from '../images/drawableOf.js';

/**
 * Draws a picture under a view on a canvas at the screen's own density.
 * @param unitsAcross how many units of the view the picture is wide (panel mm, or photo px)
 */
export function drawPicture(
  canvas: HTMLCanvasElement,
  { full, small, width, height }: Drawable,
  unitsAcross: number,
  view: ViewTransform,
): void {
  const density = window.devicePixelRatio || 1;
  const across = Math.round(canvas.clientWidth * density);
  const down = Math.round(canvas.clientHeight * density);
  if (canvas.width !== across || canvas.height !== down) {
    canvas.width = across;
    canvas.height = down;
  }
  const drawing = canvas.getContext('2d');
  if (!drawing || across === 0 || down === 0) return;
  const shownAcross = unitsAcross * view.pxPerMm * density;
  const bitmap = shownAcross <= small.width * 1.05 ? small : full;
  const scale = shownAcross / bitmap.width;
  drawing.setTransform(1, 0, 0, 1, 0, 0);
  drawing.clearRect(0, 0, across, down);
  drawing.imageSmoothingEnabled = scale < 4;
  drawing.imageSmoothingQuality = 'high';
  const left = view.x * density;
  const top = view.y * density;
  const toBitmap = bitmap.width / shownAcross;
  const sx = Math.max(0, -left * toBitmap);
  const sy = Math.max(0, -top * toBitmap);
  const shownDown = (shownAcross * height) / width;
  const sw = Math.min(bitmap.width - sx, across * toBitmap);
  const sh = Math.min(bitmap.height - sy, down * toBitmap);
  const stretch = shownDown / bitmap.height;
  drawing.drawImage(
    bitmap,
    sx,
    sy,
    sw,
    sh,
    Math.max(0, left),
    Math.max(0, top),
    sw * scale,
    sh * stretch,
  );
}
