import { gaussianBlur } from '../../filter/gaussianBlur.js';
import { type GradientPlanes, gaussianGradient } from '../../filter/gaussianGradient.js';
import { type BlockTensor, blockTensor } from '../../grain/blockTensor.js';
import type { Plane } from '../../image/plane.js';

/** Scales of one break map. */
export interface BreakMapOptions {
  /** Of the slope: a step at the seam is felt within this, mm. */
  readonly sigmaMm: number;
  /** Rows nearer than this do not count as the candidate's surroundings, mm. */
  readonly innerMm: number;
  readonly cellPx: number;
  readonly columns: number;
}

/** Smoothing of the grain direction, and how far to either side it is taken from, mm. */
const directionSigmaMm = 3;
const directionOffMm = 5;
/** Surroundings that a candidate is measured against, mm. */
const outerMm = 10;
const levels = 3;

/**
 * Where the picture changes along its own grain: ln of the energy of the slope along the grain in
 * a row over that of its surroundings in the same column, summed over stretches of 1, 2 and 4
 * cells whose slope is averaged first (at a seam it keeps its sign between two grain lines).
 *
 * Slope along the grain D = cos(theta) Lx + sin(theta) Ly, theta from above and below the row, not
 * from the row itself. Weight of a cell q / (1 + q): q the energy that grain lines crossing here
 * could put into a break, (|grad L| sin theta)^2, over what is there anyway.
 */
export function breakMaps(
  source: Plane,
  pxPerMm: number,
  options: BreakMapOptions,
): { value: Float32Array; weight: Float32Array } {
  const { columns, cellPx } = options;
  const gradient = gaussianGradient(source, Math.max(0.8, options.sigmaMm * pxPerMm));
  const direction = twoSidedDirection(gradient, pxPerMm);
  let cells = slopeCells(gradient, direction, cellPx, columns << (levels - 1));
  const rows = source.height;
  const value = new Float32Array(columns * rows);
  const weight = new Float32Array(columns * rows);
  for (let level = 0; level < levels; level++) {
    addLogRatio(cells, columns, rows, pxPerMm, options.innerMm, value, weight);
    cells = halved(cells);
  }
  for (let i = 0; i < value.length; i++) {
    value[i] = weight[i] > 0 ? value[i] / weight[i] : 0;
    weight[i] /= levels;
  }
  return { value, weight };
}

interface Direction {
  readonly blocks: BlockTensor;
  readonly blockPx: number;
  readonly cos: Float32Array;
  readonly sin: Float32Array;
}

/** Grain direction of every block from the wood 5 mm above and below it. */
function twoSidedDirection(gradient: GradientPlanes, pxPerMm: number): Direction {
  const blockPx = Math.max(1, Math.round(pxPerMm));
  const blocks = blockTensor(gradient, blockPx, pxPerMm);
  const { width, height, stepMm } = blocks;
  const smooth = (data: Float32Array) =>
    gaussianBlur({ width, height, data }, directionSigmaMm / stepMm).data;
  const [xx, xy, yy] = [smooth(blocks.jxx), smooth(blocks.jxy), smooth(blocks.jyy)];
  const cos = new Float32Array(width * height);
  const sin = new Float32Array(width * height);
  const off = Math.round(directionOffMm / stepMm);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const a = Math.max(0, y - off) * width + x;
      const b = Math.min(height - 1, y + off) * width + x;
      const across = 0.5 * Math.atan2(2 * (xy[a] + xy[b]), xx[a] + xx[b] - yy[a] - yy[b]);
      cos[y * width + x] = -Math.sin(across);
      sin[y * width + x] = Math.cos(across);
    }
  }
  return { blocks, blockPx, cos, sin };
}

interface SlopeCells {
  readonly perRow: number;
  /** Mean slope along the grain, and mean slope across it times sin(theta). */
  readonly along: Float32Array;
  readonly crossing: Float32Array;
}

function slopeCells(g: GradientPlanes, d: Direction, cellPx: number, perRow: number): SlopeCells {
  const along = new Float32Array(perRow * g.height);
  const crossing = new Float32Array(perRow * g.height);
  const lastX = d.blocks.width - 1;
  const lastY = d.blocks.height - 1;
  for (let y = 0; y < g.height; y++) {
    const blockRow = Math.min(lastY, (y / d.blockPx) | 0) * d.blocks.width;
    for (let c = 0, x = 0; c < perRow; c++) {
      let a = 0;
      let n = 0;
      for (let end = x + cellPx; x < end; x++) {
        const b = blockRow + Math.min(lastX, (x / d.blockPx) | 0);
        const gx = g.gx[y * g.width + x];
        const gy = g.gy[y * g.width + x];
        a += d.cos[b] * gx + d.sin[b] * gy;
        n += (d.cos[b] * gy - d.sin[b] * gx) * d.sin[b];
      }
      along[y * perRow + c] = a / cellPx;
      crossing[y * perRow + c] = n / cellPx;
    }
  }
  return { perRow, along, crossing };
}

function halved(cells: SlopeCells): SlopeCells {
  const half = (v: Float32Array) => {
    const out = new Float32Array(v.length >> 1);
    for (let i = 0; i < out.length; i++) out[i] = (v[2 * i] + v[2 * i + 1]) / 2;
    return out;
  };
  return { perRow: cells.perRow >> 1, along: half(cells.along), crossing: half(cells.crossing) };
}

function addLogRatio(
  cells: SlopeCells,
  columns: number,
  rows: number,
  rowsPerMm: number,
  innerMm: number,
  value: Float32Array,
  weight: Float32Array,
): void {
  const per = cells.perRow / columns;
  const outer = Math.round(outerMm * rowsPerMm);
  const inner = Math.round(innerMm * rowsPerMm);
  const energy = new Float64Array(rows);
  const sumAlong = new Float64Array(rows + 1);
  const sumCrossing = new Float64Array(rows + 1);
  for (let c = 0; c < columns; c++) {
    for (let y = 0; y < rows; y++) {
      let e = 0;
      let k = 0;
      for (let i = y * cells.perRow + c * per, end = i + per; i < end; i++) {
        e += cells.along[i] * cells.along[i];
        k += cells.crossing[i] * cells.crossing[i];
      }
      energy[y] = e;
      sumAlong[y + 1] = sumAlong[y] + e;
      sumCrossing[y + 1] = sumCrossing[y] + k;
    }
    for (let y = 0; y < rows; y++) {
      const [a, b] = [Math.max(0, y - outer), Math.min(rows, y + outer + 1)];
      const [p, q] = [Math.max(0, y - inner), Math.min(rows, y + inner + 1)];
      const n = b - a - (q - p);
      const usual = (sumAlong[b] - sumAlong[a] - sumAlong[q] + sumAlong[p]) / n + 1e-12;
      const could = (sumCrossing[b] - sumCrossing[a] - sumCrossing[q] + sumCrossing[p]) / n;
      const ratio = Math.log((energy[y] + 0.02 * usual) / usual);
      const w = could / (could + usual);
      value[y * columns + c] += w * Math.max(-2, Math.min(3, ratio));
      weight[y * columns + c] += w;
    }
  }
}
