/** One channel of an image: `data[y * width + x]`, x to the right, y down. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** A plane of zeros, `width` x `height` pixels. */
export function createPlane(width: number, height: number): Plane {
  return { width, height, data: new Float32Array(width * height) };
}
