import type { RgbImage } from '../../core/image/rgbImage.js';

/** A photo as it came from its file: upright, sRGB, no alpha. */
export interface DecodedPhoto {
  readonly image: RgbImage;
  /** What the file could not give, in the user's words. */
  readonly notes: readonly string[];
}
