/** A matrix on OpenCV's own heap; whoever makes it frees it with `delete()`. */
export interface CvMat {
  readonly rows: number;
  readonly cols: number;
  /** A view of the heap, stale after any further call: read it again each time. */
  readonly data: Uint8Array;
  readonly data32S: Int32Array;
  readonly data64F: Float64Array;
  delete(): void;
}

/** A list of matrices on OpenCV's heap. */
export interface CvMatVector {
  size(): number;
  /** A new handle that must be deleted as well. */
  get(index: number): CvMat;
  delete(): void;
}

export interface CvSize {
  readonly width: number;
  readonly height: number;
}

export interface CvPoint {
  readonly x: number;
  readonly y: number;
}

type Colour = readonly number[];

/**
 * The few functions of OpenCV 4.3 that are used, with their types; opencv-wasm itself
 * declares every member as `any`.
 * Source: https://docs.opencv.org/4.3.0/ (modules core and imgproc).
 */
export interface OpenCv {
  readonly Mat: new (rows?: number, cols?: number, type?: number) => CvMat;
  readonly MatVector: new () => CvMatVector;
  readonly Size: new (width: number, height: number) => CvSize;
  readonly Point: new (x: number, y: number) => CvPoint;
  readonly Scalar: new (...values: number[]) => Colour;
  readonly CV_8UC1: number;
  readonly CV_8UC3: number;
  readonly CV_64FC1: number;
  readonly INTER_LINEAR: number;
  readonly WARP_INVERSE_MAP: number;
  readonly BORDER_CONSTANT: number;
  readonly BORDER_REPLICATE: number;
  readonly RETR_EXTERNAL: number;
  readonly CHAIN_APPROX_NONE: number;
  readonly MORPH_CLOSE: number;
  readonly MORPH_OPEN: number;
  readonly MORPH_RECT: number;
  warpPerspective(
    from: CvMat,
    to: CvMat,
    matrix: CvMat,
    size: CvSize,
    flags: number,
    borderMode: number,
    borderValue: Colour,
  ): void;
  getStructuringElement(shape: number, size: CvSize): CvMat;
  morphologyEx(
    from: CvMat,
    to: CvMat,
    operation: number,
    kernel: CvMat,
    anchor: CvPoint,
    iterations: number,
    borderMode: number,
    borderValue: Colour,
  ): void;
  findContours(
    mask: CvMat,
    contours: CvMatVector,
    hierarchy: CvMat,
    mode: number,
    method: number,
  ): void;
  contourArea(contour: CvMat): number;
  arcLength(curve: CvMat, closed: boolean): number;
  convexHull(points: CvMat, hull: CvMat, clockwise: boolean, returnPoints: boolean): void;
  approxPolyDP(curve: CvMat, simpler: CvMat, tolerance: number, closed: boolean): void;
  exceptionFromPtr(pointer: number): { readonly msg: string };
}

/** Loads OpenCV on first use; the second call gives the same instance. */
export type OpenCvSource = () => Promise<{ readonly cv: OpenCv }>;
