import type { ComparedCandidate } from '../../core/results/compareResult.js';
import { escapeXml } from '../draw/escapeXml.js';
import { px } from '../draw/px.js';
import type { ScoreFrame } from '../score/scoreFrame.js';

/** A candidate's face with the best place for the front (a frame), or the best rip (a line). */
export function candidateStrip(
  { widthMm, heightMm, front, bestYMm }: ComparedCandidate,
  i: number,
  topPx: number,
  { marginPx, scale }: ScoreFrame,
  { photoHrefs, photoId }: { readonly photoHrefs?: readonly string[]; readonly photoId?: string },
): { readonly svg: string; readonly bottomPx: number } {
  const [width, height] = [widthMm * scale, heightMm * scale];
  const place = `x="${px(marginPx)}" y="${px(topPx)}" width="${px(width)}" height="${px(height)}"`;
  const ground = `<rect ${place} fill="#b9b9bb"/>`;
  const href = photoHrefs?.[i];
  const photo = photoId
    ? `<use href="#${escapeXml(photoId)}${i + 1}" transform="translate(${px(marginPx)} ${px(topPx)}) scale(${width.toFixed(4)} ${height.toFixed(4)})"/>`
    : href
      ? `<image href="${escapeXml(href)}" ${place} preserveAspectRatio="none"/>`
      : '';
  const outline = (d: string) =>
    `<path d="${d}" fill="none" stroke="#ffffff" stroke-opacity="0.85" stroke-width="4"/><path d="${d}" fill="none" stroke="#161616" stroke-width="1.6" stroke-dasharray="7 4"/>`;
  const marks = front
    ? outline(
        `M${px(marginPx + front.xMm * scale)} ${px(topPx + front.yMm * scale)}h${px(front.widthMm * scale)}v${px(front.heightMm * scale)}h${px(-front.widthMm * scale)}Z`,
      )
    : bestYMm === null
      ? ''
      : outline(`M${px(marginPx)} ${px(topPx + bestYMm * scale)}h${px(width)}`);
  return { svg: ground + photo + marks, bottomPx: topPx + height };
}
