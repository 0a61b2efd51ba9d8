import type { FrontPlace, Photo, Settings } from '../state/project.js';
import { panelSize } from './panelSize.js';

/** Where the front lies: as placed, or in the middle of the panel. */
export function frontPlaceOf(photo: Photo, settings: Settings): FrontPlace | null {
  const size = panelSize(photo);
  if (!size) return null;
  return (
    photo.frontPlace ?? {
      xMm: Math.max(0, (size.widthMm - settings.frontWidthMm) / 2),
      yMm: Math.max(0, (size.heightMm - settings.frontHeightMm) / 2),
    }
  );
}

/** The place moved as little as needed to lie inside the panel with its kerfs. */
export function keepFrontInside(
  { xMm, yMm }: FrontPlace,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  { frontWidthMm, frontHeightMm, kerfMm, dressMm }: Settings,
): FrontPlace {
  const edge = kerfMm + dressMm;
  const within = (at: number, size: number, room: number) =>
    Math.max(edge, Math.min(room - size - edge, at));
  return {
    xMm: within(xMm, frontWidthMm, widthMm),
    yMm: within(yMm, frontHeightMm, heightMm),
  };
}
