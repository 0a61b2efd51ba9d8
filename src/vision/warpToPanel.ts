import type { CornersPx } from '../core/image/photoScale.js';
import type { RgbImage } from '../core/image/rgbImage.js';
import { matFromImage } from './matFromImage.js';
import type { OpenCv } from './openCv.js';
import { panelToPhoto } from './panelToPhoto.js';
import { withMats } from './withMats.js';

/** The working picture that a photo is warped into. */
export interface PanelRaster {
  /** Size in whole pixels. */
  readonly width: number;
  readonly height: number;
  /** Size of the panel in working pixels, not rounded: width and height are within half a pixel. */
  readonly exactWidth: number;
  readonly exactHeight: number;
}

/**
 * Pulls the photo square, so that the four corners become the corners of the panel.
 *
 * Each working pixel is read from the photo by linear interpolation at the place where the
 * homography puts its centre.
 * @param cv OpenCV
 * @param photo at about the working density already, so that nothing aliases
 * @param corners in the pixels of this photo
 * @param raster the picture to make
 */
export function warpToPanel(
  cv: OpenCv,
  photo: RgbImage,
  corners: CornersPx,
  raster: PanelRaster,
): RgbImage {
  const { width, height, exactWidth, exactHeight } = raster;
  return withMats(cv, (keep) => {
    const from = keep(matFromImage(cv, photo));
    const to = keep(new cv.Mat());
    const map = keep(new cv.Mat(3, 3, cv.CV_64FC1));
    map.data64F.set(betweenPixelCentres(panelToPhoto(corners, exactWidth, exactHeight)));
    const flags = cv.INTER_LINEAR | cv.WARP_INVERSE_MAP;
    const size = new cv.Size(width, height);
    cv.warpPerspective(from, to, map, size, flags, cv.BORDER_REPLICATE, new cv.Scalar());
    return { width, height, data: to.data.slice() };
  });
}

/**
 * The same map for OpenCV, which counts from the centre of the first pixel, not from its corner:
 * T(-1/2) H T(1/2).
 */
function betweenPixelCentres(map: readonly number[]): number[] {
  const rows = [0, 3, 6].map((row) => [
    map[row],
    map[row + 1],
    map[row + 2] + (map[row] + map[row + 1]) / 2,
  ]);
  const [x, y, w] = rows;
  return [...x.map((v, i) => v - w[i] / 2), ...y.map((v, i) => v - w[i] / 2), ...w];
}
