import type { PanelPhoto } from '../core/image/panelPhoto.js';
import type { PhotoScale } from '../core/image/photoScale.js';
import type { PointPx } from '../core/image/pointPx.js';
import { panelToPhoto } from './panelToPhoto.js';

/**
 * Where a place of the photo lies on the squared-up panel, mm.
 * @param photo its size, px @param panel the same photo squared up by `scale`
 */
export function photoToPanel(
  place: PointPx,
  photo: { readonly width: number; readonly height: number },
  panel: Pick<PanelPhoto, 'widthMm' | 'heightMm'>,
  scale: PhotoScale,
): { readonly xMm: number; readonly yMm: number } {
  if (scale.kind !== 'size' || !scale.cornersPx) {
    return {
      xMm: (place.x * panel.widthMm) / photo.width,
      yMm: (place.y * panel.heightMm) / photo.height,
    };
  }
  // Cramer's rule on (x, y) of: place w = H (x, y, 1).
  const [a, b, c, d, e, f, g, h] = panelToPhoto(scale.cornersPx, panel.widthMm, panel.heightMm);
  const [ax, bx, cx] = [a - place.x * g, b - place.x * h, place.x - c];
  const [ay, by, cy] = [d - place.y * g, e - place.y * h, place.y - f];
  const det = ax * by - bx * ay;
  return { xMm: (cx * by - bx * cy) / det, yMm: (ax * cy - cx * ay) / det };
}
