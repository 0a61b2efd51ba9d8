import type { BlockTensor } from '../../grain/blockTensor.js';
import type { Plane } from '../../image/plane.js';
import { sideDirections } from './sideDirections.js';
import { SideReader } from './sideReader.js';

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
  const blockPx = Math.round(blocks.stepMm * pxPerMm);
  const { above, below } = sideDirections(blocks);
  const upper = new SideReader(source, pxPerMm, above, blockPx, -1);
  const lower = new SideReader(source, pxPerMm, below, blockPx, 1);
  const cells = () => new Float32Array(columns * source.height);
  const bands = bandEdgesMm.map((edgeMm) => ({ edgeMm, d: cells(), e: cells(), crossed: cells() }));
  const a = new Float32Array(perRow);
  const b = new Float32Array(perRow);
  const bin = new Int32Array(perRow);
  const du = new Float32Array(perRow);
  const bins = new RowBins(Math.ceil((perRow * stride) / pxPerMm / binMm) + 1);
  // Every second row: a third of a millimetre either way is less than a line's place is known to.
  for (let y = 0; y < source.height; y += 2) {
    const edge = Math.min(above.edges - 1, Math.round((y + 0.5) / blockPx));
    upper.read(y, edge, stride, a);
    lower.read(y, edge, stride, b);
    let u = 0;
    for (let i = 0; i < perRow; i++) {
      const k = edge * above.columns + Math.min(above.columns - 1, ((i * stride) / blockPx) | 0);
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
  private readonly slowA: Float32Array;
  private readonly slowB: Float32Array;
  private last = -1;
  constructor(count: number) {
    this.discord = new Float32Array(count);
    this.energy = new Float32Array(count);
    this.a = new Float32Array(count);
    this.b = new Float32Array(count);
    this.w = new Float32Array(count);
    this.slowA = new Float32Array(count);
    this.slowB = new Float32Array(count);
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
    const { slowA, slowB } = this;
    this.slow(this.a, reach, slowA);
    this.slow(this.b, reach, slowB);
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
  private slow(sum: Float32Array, reach: number, out: Float32Array): void {
    const { last, w: weight } = this;
    let s = 0;
    let w = 0;
    for (let k = -reach; k <= last; k++) {
      if (k + reach <= last) {
        s += sum[k + reach];
        w += weight[k + reach];
      }
      if (k - reach - 1 >= 0) {
        s -= sum[k - reach - 1];
        w -= weight[k - reach - 1];
      }
      if (k >= 0) out[k] = s / (w + 1e-9);
    }
  }
}
