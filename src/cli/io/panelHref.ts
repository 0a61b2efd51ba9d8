import sharp from 'sharp';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';

const widestPx = 2400;

/** The panel as a JPEG data URL, at most 2400 px wide, for pictures that stand alone. */
export async function panelHref({ image }: PanelPhoto): Promise<string> {
  const { width, height, data } = image;
  const jpeg = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize({ width: widestPx, withoutEnlargement: true })
    .jpeg({ quality: 88, chromaSubsampling: '4:4:4' })
    .toBuffer();
  return `data:image/jpeg;base64,${jpeg.toString('base64')}`;
}
