import type { BlockTensor } from '../../grain/blockTensor.js';
import type { Plane } from '../../image/plane.js';
import { type SideDirections, sideDirections } from './sideDirections.js';

/** Depth of wood read on each side of a row, and longest way along the grain to reach it, mm. */
const nearMm = 0.5;
const farMm = 2.2;
const wayMm = 22;
const longestStepMm = 1.3;
const deepestStepMm = 0.3;
/** Pieces of the across-grain coordinate; half windows that part fine lines, wide ones, shading, mm. */
const binMm = 0.25;
const bandEdgesMm: readonly number[] = [1.25, 5];

/** One band of spacings: patterns finer than edgeMm (and not in a finer band), cell by cell. */
export interface DiscordBand {
  readonly edgeMm: number;
  readonly d: Float32Array;
  readonly e: Float32Array;
  /** Wood across the grain that passes the cell's stretch of the row, mm. */
  readonly crossed: Float32Array;
}

/**
 * How far the lines of the two sides of every row are from meeting, each side carried along its
 * own grain to the row: the same reading as the score's, for all rows at once.
 *
 * With a, b the two profiles in the across-grain coordinate u, slow shading taken off, a cell
 * holds d = sum (a - b)^2 du and e = sum (a^2 + b^2) du; over a line sum d / sum e is 0 where every
 * line runs through and 1 where the sides have nothing in common. Weighed by du, so that wood
 * that the line really crosses counts, not stretches along which nothing crosses it.
 */
export function discordMap(
  source: Plane,
  pxPerMm: number,
  blocks: BlockTensor,
  columnPx: number,
  columns: number,
): readonly DiscordBand[] {
  const stride = 2;
  const perRow = Math.floor((columns * columnPx) / stride);
  const perColumn = columnPx / stride;
  const blockPx = blocks.stepMm * pxPerMm;
  const { above, below } = sideDirections(blocks);
  const readAbove = sideReader(source, pxPerMm, above, blockPx, -1);
  const readBelow = sideReader(source, pxPerMm, below, blockPx, 1);
  const cells = () => new Float32Array(columns * source.height);
  const bands = bandEdgesMm.map((edgeMm) => ({ edgeMm, d: cells(), e: cells(), crossed: cells() }));
  const a = new Float32Array(perRow);
  const b = new Float32Array(perRow);
  const bin = new Int32Array(perRow);
  const du = new Float32Array(perRow);
  const bins = new RowBins(Math.ceil((perRow * stride) / pxPerMm / binMm) + 1);
  // Every second row: a third of a millimetre either way is less than a line's place is known to.
  for (let y = 0; y < source.height; y += 2) {
    const edge = Math.min(above.edges - 1, Math.round((y + 0.5) / blockPx)) * above.columns;
    readAbove(y, edge, stride, a);
    readBelow(y, edge, stride, b);
    let u = 0;
    for (let i = 0; i < perRow; i++) {
      const k = edge + Math.min(above.columns - 1, ((i * stride) / blockPx) | 0);
      const slant = (Math.abs(above.sin[k]) + Math.abs(below.sin[k])) / 2;
      du[i] = (slant * stride) / pxPerMm;
      u += du[i];
      bin[i] = (u / binMm) | 0;
    }
    bins.fill(a, b, bin, du);
    for (const band of bands) {
      bins.next(band.edgeMm);
      for (let i = 0; i < perRow; i++) {
        if (Number.isNaN(a[i] + b[i])) continue;
        const cell = y * columns + ((i / perColumn) | 0);
        band.d[cell] += du[i] * bins.discord[bin[i]];
        band.e[cell] += du[i] * bins.energy[bin[i]];
        band.crossed[cell] += du[i];
      }
    }
  }
  for (const { d, e, crossed } of bands) for (const cell of [d, e, crossed]) doubled(cell, columns);
  return bands;
}

/** Odd rows say what the even rows above them say. */
function doubled(cells: Float32Array, columns: number): void {
  for (let from = 0; from + 2 * columns <= cells.length; from += 2 * columns) {
    cells.copyWithin(from + columns, from, from + columns);
  }
}

/** Both profiles of one row in bins of the across-grain coordinate. */
class RowBins {
  readonly discord: Float32Array;
  readonly energy: Float32Array;
  private readonly a: Float32Array;
  private readonly b: Float32Array;
  private readonly w: Float32Array;
  private last = -1;
  constructor(count: number) {
    this.discord = new Float32Array(count);
    this.energy = new Float32Array(count);
    this.a = new Float32Array(count);
    this.b = new Float32Array(count);
    this.w = new Float32Array(count);
  }

  fill(a: Float32Array, b: Float32Array, bin: Int32Array, du: Float32Array): void {
    this.last = bin[bin.length - 1];
    for (let k = 0; k <= this.last; k++) this.a[k] = this.b[k] = this.w[k] = 0;
    for (let i = 0; i < a.length; i++) {
      if (Number.isNaN(a[i] + b[i])) continue;
      this.a[bin[i]] += du[i] * a[i];
      this.b[bin[i]] += du[i] * b[i];
      this.w[bin[i]] += du[i];
    }
  }

  /** Takes the pattern finer than edgeMm off both profiles and compares it. */
  next(edgeMm: number): void {
    const reach = Math.round(edgeMm / binMm);
    const [slowA, slowB] = [this.slow(this.a, reach), this.slow(this.b, reach)];
    for (let k = 0; k <= this.last; k++) {
      const w = this.w[k] + 1e-9;
      const da = this.a[k] / w - slowA[k];
      const db = this.b[k] / w - slowB[k];
      this.discord[k] = (da - db) ** 2;
      this.energy[k] = da * da + db * db;
      this.a[k] = w * slowA[k];
      this.b[k] = w * slowB[k];
    }
  }

  /** Mean over `reach` bins to either side. */
  private slow(sum: Float32Array, reach: number): Float32Array {
    const { last } = this;
    const out = new Float32Array(last + 1);
    let [s, w] = [0, 0];
    for (let k = -reach; k <= last; k++) {
      if (k + reach <= last) {
        s += sum[k + reach];
        w += this.w[k + reach];
      }
      if (k - reach - 1 >= 0) {
        s -= sum[k - reach - 1];
        w -= this.w[k - reach - 1];
      }
      if (k >= 0) out[k] = s / (w + 1e-9);
    }
    return out;
  }
}

/** Weight of a reading by its way, px: the longer the way, the less sure. */
function weightsAlong(longest: number): Float64Array {
  return Float64Array.from({ length: Math.ceil(longest) + 8 }, (_, way) =>
    Math.exp(-way / (0.5 * longest)),
  );
}

/** Reads one side of row y, carried along its grain to the row; NaN where no line reaches it. */
type SideReader = (y: number, edge: number, stride: number, out: Float32Array) => void;

function sideReader(
  { width, height, data }: Plane,
  pxPerMm: number,
  directions: SideDirections,
  blockPx: number,
  side: -1 | 1,
): SideReader {
  const near = nearMm * pxPerMm;
  const far = farMm * pxPerMm;
  const longest = wayMm * pxPerMm;
  const perPx = 1 / blockPx;
  const lastColumn = directions.columns - 1;
  const fading = weightsAlong(longest);
  const { along, deep, way: wayOf } = stepsOf(directions, pxPerMm, side);
  return (y, edge, stride, out) => {
    for (let i = 0; i < out.length; i++) {
      let x = i * stride;
      let depth = 0;
      let way = 0;
      let sum = 0;
      let weight = 0;
      while (depth < far && way < longest) {
        const k = edge + Math.min(lastColumn, (x * perPx) | 0);
        x += along[k];
        depth += deep[k];
        way += wayOf[k];
        if (x < 0 || x >= width - 1) break;
        if (depth < near) continue;
        const py = y + side * depth;
        if (py < 0 || py >= height - 1) break;
        const j = (py | 0) * width + (x | 0);
        const fx = x - (x | 0);
        const fy = py - (py | 0);
        const top = data[j] + fx * (data[j + 1] - data[j]);
        const bottom = data[j + width] + fx * (data[j + width + 1] - data[j + width]);
        const w = fading[way | 0];
        sum += w * (top + fy * (bottom - top));
        weight += w;
      }
      out[i] = weight > 0 ? sum / weight : Number.NaN;
    }
  };
}

/** One step along the grain into the board from every block: along x, in depth and in all, px. */
function stepsOf({ cos, sin }: SideDirections, pxPerMm: number, side: -1 | 1) {
  const along = new Float32Array(cos.length);
  const deep = new Float32Array(cos.length);
  const way = new Float32Array(cos.length);
  for (let k = 0; k < cos.length; k++) {
    const slant = Math.abs(sin[k]);
    const length = Math.min(longestStepMm * pxPerMm, (deepestStepMm * pxPerMm) / (slant + 1e-6));
    along[k] = (sin[k] * side >= 0 ? length : -length) * cos[k];
    deep[k] = length * slant;
    way[k] = length;
  }
  return { along, deep, way };
}
