import type { Plane } from '../image/plane.js';

/** Grain direction per block of the plane: unit vectors, sign free. */
export interface BlockDirections {
  readonly width: number;
  readonly height: number;
  readonly blockPx: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/**
 * The way along the grain from a block of pixels, ahead and behind: where it is read, and how much
 * each reading counts. One object serves for all blocks of a plane, one after the other.
 */
export class GrainWay {
  /** Readings of the present block; the arrays hold so many. */
  count = 0;
  /** From a pixel to the first of the four that a reading lies between. */
  readonly offset: Int32Array;
  /** Their weights, four to a reading: upper left, upper right, lower left, lower right. */
  readonly corner: Float64Array;
  /** Sum of all weights, the pixel's own (1) included. */
  total = 1;

  /** @param weights of the readings by their step, `weights[0]` the pixel itself. */
  constructor(
    private readonly plane: Plane,
    private readonly field: BlockDirections,
    private readonly stepPx: number,
    private readonly weights: Float64Array,
  ) {
    this.offset = new Int32Array(2 * weights.length);
    this.corner = new Float64Array(8 * weights.length);
  }

  /**
   * Goes the way from the middle of a block, pixels x0 .. x1 - 1 by y0 .. y1 - 1, as far as none of
   * them leaves the plane.
   */
  from(x0: number, y0: number, x1: number, y1: number): void {
    this.count = 0;
    this.total = 1;
    this.walk(x0, y0, x1, y1, this.stepPx);
    this.walk(x0, y0, x1, y1, -this.stepPx);
  }

  private walk(x0: number, y0: number, x1: number, y1: number, stepPx: number): void {
    const { weights, offset, corner } = this;
    const { width, height } = this.plane;
    const { cos, sin, width: columns, height: rows, blockPx } = this.field;
    const perPx = 1 / blockPx;
    const startX = (x0 + x1 - 1) / 2;
    const startY = (y0 + y1 - 1) / 2;
    let x = startX;
    let y = startY;
    let dx = 0;
    let dy = 0;
    for (let k = 1; k < weights.length; k++) {
      const bx = Math.min(columns - 1, (x * perPx) | 0);
      const block = Math.min(rows - 1, (y * perPx) | 0) * columns + bx;
      let stepX = cos[block] * stepPx;
      let stepY = sin[block] * stepPx;
      if (k > 1 && stepX * dx + stepY * dy < 0) {
        stepX = -stepX;
        stepY = -stepY;
      }
      dx = stepX;
      dy = stepY;
      x += dx;
      y += dy;
      const ix = Math.floor(x - startX);
      const iy = Math.floor(y - startY);
      if (x0 + ix < 0 || y0 + iy < 0 || x1 + ix >= width || y1 + iy >= height) return;
      const fx = x - startX - ix;
      const fy = y - startY - iy;
      const n = this.count++;
      const w = weights[k];
      offset[n] = iy * width + ix;
      corner[4 * n] = w * (1 - fx) * (1 - fy);
      corner[4 * n + 1] = w * fx * (1 - fy);
      corner[4 * n + 2] = w * (1 - fx) * fy;
      corner[4 * n + 3] = w * fx * fy;
      this.total += w;
    }
  }
}
