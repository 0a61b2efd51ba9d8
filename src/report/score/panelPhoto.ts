import { escapeXml } from '../draw/escapeXml.js';
import { px } from '../draw/px.js';
import type { ScoreDrawing } from './scoreDrawing.js';
import type { ScoreFrame } from './scoreFrame.js';

/** The rectified photograph, plain grey when none was given, with marks where seams meet its edge. */
export function panelPhoto({ photoHref, photoId }: ScoreDrawing, { panel }: ScoreFrame): string {
  const { x, y, width, height } = panel;
  const place = `x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}"`;
  const ground = `<rect ${place} fill="#b9b9bb"/>`;
  if (photoId) {
    const stretch = `translate(${px(x)} ${px(y)}) scale(${width.toFixed(4)} ${height.toFixed(4)})`;
    return `${ground}<use href="#${escapeXml(photoId)}" transform="${stretch}"/>`;
  }
  if (!photoHref) return ground;
  return `${ground}<image href="${escapeXml(photoHref)}" ${place} preserveAspectRatio="none"/>`;
}
