import type { PointPx } from './pointPx.js';

/** The panel's four corners in the photo, clockwise from the panel's top left. */
export type CornersPx = readonly [PointPx, PointPx, PointPx, PointPx];

/** How a photo is given its scale: one of the three ways that the contract knows. */
export type PhotoScale =
  | {
      /** The real size of the panel; without corners the whole frame is the panel. */
      readonly kind: 'size';
      readonly widthMm: number;
      readonly heightMm: number;
      readonly cornersPx: CornersPx | null;
    }
  | {
      /** A square-on photo of known density. */
      readonly kind: 'pxPerMm';
      readonly pxPerMm: number;
    }
  | {
      /** A square-on photo with one known distance in it. */
      readonly kind: 'known';
      readonly fromPx: PointPx;
      readonly toPx: PointPx;
      readonly lengthMm: number;
    };
