import type { GradientPlanes } from '../../filter/gaussianGradient.js';
import type { Direction } from './direction.js';
import { logRatioMap } from './logRatioMap.js';

/** Scales of one break map. */
export interface BreakMapOptions {
  /** Rows nearer than this do not count as the candidate's surroundings, mm. */
  readonly innerMm: number;
  readonly cellPx: number;
  readonly columns: number;
}

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
  gradient: GradientPlanes,
  direction: Direction,
  pxPerMm: number,
  { columns, cellPx, innerMm }: BreakMapOptions,
): { value: Float32Array; weight: Float32Array } {
  let cells = slopeCells(gradient, direction, cellPx, columns << (levels - 1));
  const rows = gradient.height;
  const value = new Float32Array(columns * rows);
  const weight = new Float32Array(columns * rows);
  for (let level = 0; level < levels; level++) {
    const along = columnEnergy(cells.along, columns, rows);
    const crossing = columnEnergy(cells.crossing, columns, rows);
    const ratio = logRatioMap(along, crossing, columns, rows, pxPerMm, innerMm);
    for (let i = 0; i < value.length; i++) {
      value[i] += ratio.weight[i] * ratio.value[i];
      weight[i] += ratio.weight[i];
    }
    cells = halved(cells);
  }
  for (let i = 0; i < value.length; i++) {
    value[i] = weight[i] > 0 ? value[i] / weight[i] : 0;
    weight[i] /= levels;
  }
  return { value, weight };
}

function columnEnergy(cells: Float32Array, columns: number, rows: number): Float32Array {
  const per = cells.length / (columns * rows);
  const out = new Float32Array(columns * rows);
  for (let i = 0; i < cells.length; i++) out[Math.floor(i / per)] += cells[i] * cells[i];
  return out;
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
