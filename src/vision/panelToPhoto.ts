import type { CornersPx } from '../core/image/photoScale.js';

/** A 3 x 3 matrix by rows that maps (x, y, 1) to (x w, y w, w). */
export type Homography = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

/**
 * The perspective map from the panel's frame to the photo.
 *
 * A flat panel seen by a camera without lens distortion is a homography of its true shape:
 * four corners fix it. Closed form for the rectangle (0, 0) to (width, height).
 * @param corners the panel's corners in the photo, clockwise from its top left; no three in line
 * @param width of the panel, in the unit the map shall take (mm, working pixels)
 * @param height of the panel, same unit
 * @returns maps panel (x, y) to photo pixels
 * Source: Heckbert 1989, Fundamentals of Texture Mapping and Image Warping, section 2.2.3 [M].
 */
export function panelToPhoto(corners: CornersPx, width: number, height: number): Homography {
  const [a, b, c, d] = corners;
  const bx = b.x - c.x;
  const by = b.y - c.y;
  const dx = d.x - c.x;
  const dy = d.y - c.y;
  const sumX = a.x - b.x + c.x - d.x;
  const sumY = a.y - b.y + c.y - d.y;
  const area = bx * dy - dx * by;
  const g = (sumX * dy - dx * sumY) / area;
  const h = (bx * sumY - sumX * by) / area;
  return [
    (b.x - a.x + g * b.x) / width,
    (d.x - a.x + h * d.x) / height,
    a.x,
    (b.y - a.y + g * b.y) / width,
    (d.y - a.y + h * d.y) / height,
    a.y,
    g / width,
    h / height,
    1,
  ];
}
