import { SeamgrainError } from '../errors.js';
import { gaussianBlur } from '../filter/gaussianBlur.js';
import type { CornersPx } from '../image/photoScale.js';
import type { RgbImage } from '../image/rgbImage.js';
import type { Camera } from './camera.js';
import { encodeSrgb } from './encodeSrgb.js';
import { exposePhoto } from './exposePhoto.js';
import { warpOntoBench } from './warpOntoBench.js';

/** A photograph and where the panel's corners lie in it. */
export interface Photograph {
  readonly image: RgbImage;
  /** Clockwise from the panel's top left. */
  readonly cornersPx: CornersPx;
}

/**
 * Photographs a drawn panel lying on a bench: perspective, uneven light, blur, noise.
 *
 * All in linear light, in the order of nature: warp, lens blur, light and vignette, white
 * balance, noise, then 8-bit sRGB. Compression is left to whoever writes the file.
 *
 * @param image the panel, square on; its four corners go to camera.cornersPx.
 * @throws SeamgrainError when the frame is empty or the corners make no convex quadrilateral.
 */
export function photograph(image: RgbImage, camera: Camera): Photograph {
  const { cornersPx, blurPx = 0 } = camera;
  const turns = cornersPx.map((p, i) => {
    const q = cornersPx[(i + 1) % 4]!;
    const r = cornersPx[(i + 2) % 4]!;
    return (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x);
  });
  if (!(camera.widthPx >= 2 && camera.heightPx >= 2) || !turns.every((turn) => turn > 0)) {
    throw new SeamgrainError(
      'cannotDo',
      'The imagined camera has no frame, or the panel corners are not clockwise and convex.',
      'Give the corners clockwise from the top left of the panel, or let aimCamera place them.',
    );
  }
  const planes = warpOntoBench(image, camera);
  if (blurPx > 0) for (const plane of planes) gaussianBlur(plane, blurPx, plane);
  exposePhoto(planes, camera);
  const light = new Float32Array(3 * camera.widthPx * camera.heightPx);
  planes.forEach((plane, channel) => {
    for (let i = 0; i < plane.data.length; i++) light[3 * i + channel] = plane.data[i]!;
  });
  return { image: encodeSrgb(light, camera.widthPx, camera.heightPx), cornersPx };
}
