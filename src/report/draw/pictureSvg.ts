import { escapeXml } from './escapeXml.js';
import { fontFamily } from './fontFamily.js';
import { paint } from './paint.js';
import { px } from './px.js';
import type { Theme } from './theme.js';

/**
 * A whole picture as an SVG document: paper, definitions and marks, with its headline for those who
 * hear it.
 *
 * @param marks what is drawn on the paper. @param defs patterns that the marks use.
 */
export function pictureSvg(
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  headline: string,
  defs: string,
  marks: string,
  theme: Theme,
): string {
  const [w, h] = [px(widthPx), px(heightPx)];
  const paper = `<rect width="100%" height="100%" ${paint(theme, 'fill', 'paper')}/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${w} ${h}" width="${w}" height="${h}" role="img" aria-label="${escapeXml(headline)}" font-family="${fontFamily}"><defs>${defs}</defs>${paper}${marks}</svg>`;
}
