import type { PointPx } from '../../core/image/pointPx.js';
import type { CvMat, OpenCv } from '../openCv.js';
import { withMats } from '../withMats.js';

/** Tolerances tried for the four-sided outline, as shares of its perimeter. */
const tolerances = [0.01, 0.015, 0.02, 0.03, 0.04, 0.06];

/** A four-sided outline and how much of the frame and of itself the mask fills. */
export interface MaskQuad {
  readonly corners: readonly PointPx[];
  /** Area of the outline over that of the frame. */
  readonly frameShare: number;
  /** Area of the mask's largest piece over that of the outline. */
  readonly filled: number;
}

/**
 * The four-sided outline of the largest piece of a mask: specks removed, holes closed, convex
 * hull, then as few corners as will do (Douglas-Peucker).
 * @param mask 1 where the panel may be, width x height
 * @returns null when it is not four-sided
 */
export function quadOfMask(
  cv: OpenCv,
  mask: Uint8Array,
  width: number,
  height: number,
): MaskQuad | null {
  return withMats(cv, (keep) => {
    const shape = keep(new cv.Mat(height, width, cv.CV_8UC1));
    shape.data.set(mask);
    clean(cv, keep, shape, cv.MORPH_OPEN, Math.max(3, oddSize(width, 0.008)));
    clean(cv, keep, shape, cv.MORPH_CLOSE, Math.max(5, oddSize(width, 0.03)));
    const contours = keep(new cv.MatVector());
    cv.findContours(shape, contours, keep(new cv.Mat()), cv.RETR_EXTERNAL, cv.CHAIN_APPROX_NONE);
    const pieces = Array.from({ length: contours.size() }, (_, i) => keep(contours.get(i)));
    const areas = pieces.map((piece) => cv.contourArea(piece));
    const area = Math.max(0, ...areas);
    if (area === 0) return null;
    const hull = keep(new cv.Mat());
    cv.convexHull(pieces[areas.indexOf(area)], hull, true, true);
    const quad = simplest(cv, keep, hull);
    if (!quad) return null;
    const quadArea = cv.contourArea(quad);
    return {
      corners: pointsOf(quad),
      frameShare: quadArea / (width * height),
      filled: area / quadArea,
    };
  });
}

type Keep = <T extends { delete(): void }>(made: T) => T;

function clean(cv: OpenCv, keep: Keep, shape: CvMat, operation: number, size: number): void {
  const kernel = keep(cv.getStructuringElement(cv.MORPH_RECT, new cv.Size(size, size)));
  const middle = new cv.Point(-1, -1);
  const none = new cv.Scalar();
  cv.morphologyEx(shape, shape, operation, kernel, middle, 1, cv.BORDER_REPLICATE, none);
}

function simplest(cv: OpenCv, keep: Keep, hull: CvMat): CvMat | null {
  const around = cv.arcLength(hull, true);
  for (const tolerance of tolerances) {
    const simpler = keep(new cv.Mat());
    cv.approxPolyDP(hull, simpler, tolerance * around, true);
    if (simpler.rows === 4) return simpler;
    if (simpler.rows < 4) return null;
  }
  return null;
}

/** Contour points sit on pixel centres; places in a photo count from the corner. */
function pointsOf(contour: CvMat): PointPx[] {
  return Array.from({ length: contour.rows }, (_, i) => ({
    x: contour.data32S[2 * i] + 0.5,
    y: contour.data32S[2 * i + 1] + 0.5,
  }));
}

function oddSize(width: number, share: number): number {
  return 2 * Math.round((share * width) / 2) + 1;
}
