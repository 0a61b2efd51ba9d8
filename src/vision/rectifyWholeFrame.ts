import type { PanelPhoto } from '../core/image/panelPhoto.js';
import type { RgbImage } from '../core/image/rgbImage.js';
import { checkDensity } from './checkDensity.js';
import { resizeByArea } from './resizeByArea.js';
import { resolutionNotes } from './resolutionNotes.js';
import { shapeNotes } from './shapeNotes.js';

/**
 * Takes a square-on photo whose whole frame is the panel to the working density.
 * @param photo sRGB, whole frame
 * @param widthMm real length from left to right
 * @param heightMm real width from top to bottom
 * @param maxPxPerMm working density at most; never upsampled
 * @throws SeamgrainError badPanel, badPhoto when size and photo cannot belong together
 */
export function rectifyWholeFrame(
  photo: RgbImage,
  widthMm: number,
  heightMm: number,
  maxPxPerMm: number,
): PanelPhoto {
  const acrossPxPerMm = photo.width / widthMm;
  const downPxPerMm = photo.height / heightMm;
  const photoPxPerMm = Math.min(acrossPxPerMm, downPxPerMm);
  checkDensity(photoPxPerMm, widthMm, heightMm);
  const notes = [...shapeNotes(acrossPxPerMm, downPxPerMm, true), ...resolutionNotes(photoPxPerMm)];
  const pxPerMm = Math.min(maxPxPerMm, photoPxPerMm);
  const width = Math.min(photo.width, Math.round(widthMm * pxPerMm));
  const height = Math.min(photo.height, Math.round(heightMm * pxPerMm));
  return { image: resizeByArea(photo, width, height), pxPerMm, widthMm, heightMm, notes };
}
