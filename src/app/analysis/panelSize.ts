import type { Photo } from '../state/project.js';

/** The panel's size as pinned, or null; needs no pixels. */
export function panelSize({
  scale,
  widthPx,
  heightPx,
}: Photo): { readonly widthMm: number; readonly heightMm: number } | null {
  if (!scale) return null;
  if (scale.kind === 'size') return { widthMm: scale.widthMm, heightMm: scale.heightMm };
  const pxPerMm =
    scale.kind === 'pxPerMm'
      ? scale.pxPerMm
      : Math.hypot(scale.toPx.x - scale.fromPx.x, scale.toPx.y - scale.fromPx.y) / scale.lengthMm;
  return { widthMm: widthPx / pxPerMm, heightMm: heightPx / pxPerMm };
}
