import type { JpegPicture } from '../../report/sheet/mark.js';
import type { Drawable } from './drawableOf.js';
import { panelDataUrl } from './panelDataUrl.js';

const widest = 1500;

/** The panel's photo for paper: JPEG goes into SVG and PDF as it is. */
export async function panelJpeg(drawable: Drawable): Promise<JpegPicture> {
  const { full } = drawable;
  const share = Math.min(1, widest / Math.max(full.width, full.height));
  const url = await panelDataUrl(drawable, widest);
  return {
    base64: url.slice(url.indexOf(',') + 1),
    widthPx: Math.max(1, Math.round(full.width * share)),
    heightPx: Math.max(1, Math.round(full.height * share)),
  };
}
