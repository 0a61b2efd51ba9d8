import type { RgbImage } from '../../core/image/rgbImage.js';

/** A picture ready for the screen, and a small one for when the whole of it is seen. */
export interface Drawable {
  readonly width: number;
  readonly height: number;
  readonly full: ImageBitmap;
  readonly small: ImageBitmap;
}

const smallWidth = 1600;

/** Makes a picture's bitmaps; in a worker, for a panel has some ten million pixels. */
export async function drawableOf({ data, width, height }: RgbImage): Promise<Drawable> {
  const rgba = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let from = 0, to = 0; from < data.length; from += 3, to += 4) {
    rgba[to] = data[from]!;
    rgba[to + 1] = data[from + 1]!;
    rgba[to + 2] = data[from + 2]!;
  }
  const pixels = new ImageData(rgba, width, height);
  const share = Math.min(1, smallWidth / Math.max(width, height));
  const [full, small] = await Promise.all([
    createImageBitmap(pixels),
    createImageBitmap(pixels, {
      resizeWidth: Math.max(1, Math.round(width * share)),
      resizeHeight: Math.max(1, Math.round(height * share)),
      resizeQuality: 'high',
    }),
  ]);
  return { width, height, full, small };
}
