import sharp from 'sharp';
import type { RgbImage } from '../../core/image/rgbImage.js';

/** A picture as PNG, marked with its density where that is known. */
export async function encodePng(
  { width, height, data }: RgbImage,
  pxPerMm?: number,
): Promise<Buffer> {
  const picture = sharp(data, { raw: { width, height, channels: 3 } });
  return (pxPerMm ? picture.withMetadata({ density: 25.4 * pxPerMm }) : picture)
    .png({ compressionLevel: 6 })
    .toBuffer();
}
