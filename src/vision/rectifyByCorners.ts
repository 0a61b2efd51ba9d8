import type { PanelPhoto } from '../core/image/panelPhoto.js';
import type { CornersPx } from '../core/image/photoScale.js';
import type { RgbImage } from '../core/image/rgbImage.js';
import { checkCorners } from './checkCorners.js';
import { checkDensity } from './checkDensity.js';
import { edgePxPerMm } from './edgePxPerMm.js';
import type { OpenCv } from './openCv.js';
import { resizeByArea } from './resizeByArea.js';
import { resolutionNotes } from './resolutionNotes.js';
import { shapeNotes } from './shapeNotes.js';
import { warpToPanel } from './warpToPanel.js';

/** Photo pixels per working pixel up to which linear interpolation alone does not alias visibly. */
const mildReduction = 1.25;

/**
 * Squares a panel up from its four corners.
 *
 * The working density is what the photo really has along its worst edge, at most `maxPxPerMm`;
 * where the photo is denser it is first averaged down by area so that fine grain does not alias.
 * Lens distortion is not corrected: keep the panel off the photo's edges.
 * @param cv OpenCV
 * @param photo sRGB, whole frame
 * @param corners clockwise from the panel's top left, photo pixels
 * @param widthMm real length along the top edge
 * @param heightMm real width along the left edge
 * @throws SeamgrainError badPanel, badPhoto
 */
export function rectifyByCorners(
  cv: OpenCv,
  photo: RgbImage,
  corners: CornersPx,
  widthMm: number,
  heightMm: number,
  maxPxPerMm: number,
): PanelPhoto {
  checkCorners(corners, photo);
  const edges = edgePxPerMm(corners, widthMm, heightMm);
  const across = Math.sqrt(edges.top * edges.bottom);
  const down = Math.sqrt(edges.left * edges.right);
  const photoPxPerMm = Math.min(...Object.values(edges));
  const notes = [...shapeNotes(across, down, false), ...resolutionNotes(photoPxPerMm)];
  checkDensity(photoPxPerMm, widthMm, heightMm);
  const pxPerMm = Math.min(maxPxPerMm, photoPxPerMm);
  const exactWidth = widthMm * pxPerMm;
  const exactHeight = heightMm * pxPerMm;
  const near = averageDown(photo, corners, Math.sqrt(across * down) / pxPerMm);
  const image = warpToPanel(cv, near.photo, near.corners, {
    width: Math.round(exactWidth),
    height: Math.round(exactHeight),
    exactWidth,
    exactHeight,
  });
  return { image, pxPerMm, widthMm, heightMm, notes };
}

/** Averages the photo down by `reduction` where that is more than mild. */
function averageDown(
  photo: RgbImage,
  corners: CornersPx,
  reduction: number,
): { photo: RgbImage; corners: CornersPx } {
  if (reduction <= mildReduction) return { photo, corners };
  const width = Math.round(photo.width / reduction);
  const height = Math.round(photo.height / reduction);
  const move = ({ x, y }: { x: number; y: number }) => ({
    x: (x * width) / photo.width,
    y: (y * height) / photo.height,
  });
  const [a, b, c, d] = corners;
  return {
    photo: resizeByArea(photo, width, height),
    corners: [move(a), move(b), move(c), move(d)],
  };
}
