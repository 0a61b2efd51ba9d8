import type { RgbImage } from './rgbImage.js';

/**
 * The photographed panel after rectification: square on, one scale.
 * Panel frame: origin top left, x right, y down, millimetres; pixel (px, py) covers
 * panel millimetres px / pxPerMm .. (px + 1) / pxPerMm.
 */
export interface PanelPhoto {
  readonly image: RgbImage;
  readonly pxPerMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** What the photo could not tell, in the user's words (low resolution, blur, ...). */
  readonly notes: readonly string[];
}
