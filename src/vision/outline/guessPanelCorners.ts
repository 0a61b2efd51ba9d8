import { labPlanes } from '../../core/colour/labPlanes.js';
import type { CornersPx } from '../../core/image/photoScale.js';
import type { RgbImage } from '../../core/image/rgbImage.js';
import { checkCorners } from '../checkCorners.js';
import type { OpenCv } from '../openCv.js';
import { borderColours, nearestColour } from './borderColours.js';
import { orderCorners } from './orderCorners.js';
import { otsuThreshold } from './otsuThreshold.js';
import { quadOfMask } from './quadOfMask.js';
import { refineCorners } from './refineCorners.js';

const coarsePx = 420;
const leastFrameShare = 0.1;
const mostFrameShare = 0.97;
const leastFilled = 0.8;
/** How much further from the border's colours the panel must be than the rest, L*a*b* units. */
const leastSeparation = 5;

/**
 * Guesses where the panel lies in a photo, as a first offer that the maker corrects by hand.
 *
 * What differs from the colours along the frame's border is taken for the panel when it is one
 * piece with four sides; each side is then moved onto the edge nearby.
 * @param cv OpenCV, for the mask's outline
 * @param photo sRGB
 * @returns four corners clockwise from the top left, or null when no panel stands out
 */
export function guessPanelCorners(cv: OpenCv, photo: RgbImage): CornersPx | null {
  if (Math.min(photo.width, photo.height) < 64) return null;
  const reduceBy = Math.ceil(Math.max(photo.width, photo.height) / coarsePx);
  const planes = labPlanes(photo, reduceBy);
  const { width, height } = planes.lightness;
  const colours = borderColours(planes);
  const apart = planes.lightness.data.map(
    (l, i) => nearestColour(colours, [l, planes.a.data[i], planes.b.data[i]]).distance,
  );
  const { threshold, lowMean, highMean } = otsuThreshold(apart);
  if (highMean - lowMean < leastSeparation) return null;
  const quad = quadOfMask(
    cv,
    Uint8Array.from(apart, (d) => (d > threshold ? 1 : 0)),
    width,
    height,
  );
  if (!quad || quad.filled < leastFilled) return null;
  if (quad.frameShare < leastFrameShare || quad.frameShare > mostFrameShare) return null;
  const [a, b, c, d] = quad.corners.map(({ x, y }) => ({ x: x * reduceBy, y: y * reduceBy }));
  const corners = refineCorners(photo, orderCorners([a, b, c, d]));
  return corners && areCorners(corners, photo) ? corners : null;
}

function areCorners(corners: CornersPx, photo: RgbImage): boolean {
  try {
    checkCorners(corners, photo);
    return true;
  } catch {
    return false;
  }
}
