import type { Plane } from '../../image/plane.js';
import type { SideDirections } from './sideDirections.js';

/** Depth of wood read on each side of a row, and longest way along the grain to reach it, mm. */
const nearMm = 0.5;
const farMm = 2.2;
const wayMm = 22;
const longestStepMm = 1.3;
const deepestStepMm = 0.3;
/** Every step is as long or as deep as it may be, so there are no more than so many. */
const mostSteps = Math.ceil(wayMm / longestStepMm) + Math.ceil(farMm / deepestStepMm) + 1;

/**
 * Reads one side of a row, carried along its grain to the row, for all rows of a plane.
 *
 * The rows and pixels nearest to one block's edge share the way that its middle goes, and with it
 * the weights between neighbouring pixels; ways are walked anew when the edge changes, so rows are
 * best read in order.
 */
export class SideReader {
  private edge = -1;
  /** Per block column: readings on the way, and the sum of their weights. */
  private readonly count: Int32Array;
  private readonly total: Float64Array;
  /** Per reading: from a pixel to the first of the four that it lies between, and their weights. */
  private readonly offset: Int32Array;
  private readonly corner: Float64Array;
  private readonly fading: Float64Array;
  /** One step into the board from every block: along x, in depth and in all, px. */
  private readonly along: Float32Array;
  private readonly deep: Float32Array;
  private readonly long: Float32Array;

  /** @param side -1 reads the wood above the row, +1 the wood below. */
  constructor(
    private readonly plane: Plane,
    private readonly pxPerMm: number,
    private readonly directions: SideDirections,
    private readonly blockPx: number,
    private readonly side: -1 | 1,
  ) {
    const { columns } = directions;
    this.count = new Int32Array(columns);
    this.total = new Float64Array(columns);
    this.offset = new Int32Array(columns * mostSteps);
    this.corner = new Float64Array(4 * columns * mostSteps);
    this.fading = weightsAlong(wayMm * pxPerMm);
    const { cos, sin } = directions;
    this.along = new Float32Array(cos.length);
    this.deep = new Float32Array(cos.length);
    this.long = new Float32Array(cos.length);
    for (let k = 0; k < cos.length; k++) {
      const slant = Math.abs(sin[k]);
      const length = Math.min(longestStepMm * pxPerMm, (deepestStepMm * pxPerMm) / (slant + 1e-6));
      this.along[k] = (sin[k] * side >= 0 ? length : -length) * cos[k];
      this.deep[k] = length * slant;
      this.long[k] = length;
    }
  }

  /**
   * @param edge of the blocks nearest to row y.
   * @param out receives one value per `stride` pixels; NaN where no line reaches the row.
   */
  read(y: number, edge: number, stride: number, out: Float32Array): void {
    if (edge !== this.edge) this.walkFrom(edge);
    const { width, data } = this.plane;
    const { count, total, offset, corner, blockPx } = this;
    const lastColumn = this.directions.columns - 1;
    for (let i = 0; i < out.length; i++) {
      const column = Math.min(lastColumn, Math.floor((i * stride) / blockPx));
      const first = column * mostSteps;
      const end = first + count[column];
      const at = y * width + i * stride;
      let sum = 0;
      for (let n = first, c = 4 * first; n < end; n++, c += 4) {
        const j = at + offset[n];
        sum +=
          corner[c] * data[j] +
          corner[c + 1] * data[j + 1] +
          corner[c + 2] * data[j + width] +
          corner[c + 3] * data[j + width + 1];
      }
      out[i] = end > first ? sum / total[column] : Number.NaN;
    }
  }

  private walkFrom(edge: number): void {
    this.edge = edge;
    const { columns, edges } = this.directions;
    const { blockPx, plane } = this;
    const firstBeyond = Math.ceil((edge + 0.5) * blockPx - 0.5);
    // The last edge also serves the rows of the rest below it.
    const end = edge < edges - 1 ? Math.min(plane.height, firstBeyond) : plane.height;
    const first = Math.max(0, Math.ceil((edge - 0.5) * blockPx - 0.5));
    const rows = { first, last: end - 1 };
    for (let column = 0; column < columns; column++) {
      const x0 = column * blockPx;
      const x1 = column < columns - 1 ? x0 + blockPx : plane.width;
      this.walk(edge, column, x0, x1, rows);
    }
  }

  /** Goes the way from the middle of one block's pixels until one of them would leave the plane. */
  private walk(
    edge: number,
    column: number,
    x0: number,
    x1: number,
    rows: { readonly first: number; readonly last: number },
  ): void {
    const { pxPerMm, side, offset, corner, fading, along, deep, long } = this;
    const { width, height } = this.plane;
    const [near, far, longest] = [nearMm * pxPerMm, farMm * pxPerMm, wayMm * pxPerMm];
    const perPx = 1 / this.blockPx;
    const firstBlock = edge * this.directions.columns;
    const lastBlock = firstBlock + this.directions.columns - 1;
    const startX = x0 + (Math.min(x1 - x0, this.blockPx) - 1) / 2;
    let x = startX;
    let depth = 0;
    let way = 0;
    let n = column * mostSteps;
    let total = 0;
    while (depth < far && way < longest) {
      const k = Math.min(lastBlock, firstBlock + ((x * perPx) | 0));
      x += along[k];
      depth += deep[k];
      way += long[k];
      const ix = Math.floor(x - startX);
      if (x0 + ix < 0 || x1 + ix >= width) break;
      if (depth < near) continue;
      const iy = Math.floor(side * depth);
      if (rows.first + iy < 0 || rows.last + iy + 1 >= height) break;
      const fx = x - startX - ix;
      const fy = side * depth - iy;
      const w = fading[way | 0];
      offset[n] = iy * width + ix;
      corner[4 * n] = w * (1 - fx) * (1 - fy);
      corner[4 * n + 1] = w * fx * (1 - fy);
      corner[4 * n + 2] = w * (1 - fx) * fy;
      corner[4 * n + 3] = w * fx * fy;
      total += w;
      n++;
    }
    this.count[column] = n - column * mostSteps;
    this.total[column] = total;
  }
}

/** Weight of a reading by its way, px: the longer the way, the less sure. */
function weightsAlong(longest: number): Float64Array {
  return Float64Array.from({ length: Math.ceil(longest) + 8 }, (_, way) =>
    Math.exp(-way / (0.5 * longest)),
  );
}
