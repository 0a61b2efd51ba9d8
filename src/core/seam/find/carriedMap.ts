import type { Plane } from '../../image/plane.js';
import type { Direction } from './direction.js';
import { logRatioMap } from './logRatioMap.js';

/** Depth of wood read on each side of a row, longest way along the grain to reach it, mm. */
const nearMm = 0.5;
const farMm = 2.2;
const wayMm = 20;
const stepMm = 0.8;
/** Directions are taken this far into the side that is read, mm. */
const sideMm = 3;
const innerMm = 3;
/** Lines are told from the board's slow shading over this stretch along the row, mm. */
const shadingMm = 40;

/**
 * Where the two sides of a row, each carried along its own grain to the row, say different things:
 * ln of the energy of their difference over that of the surroundings. Carrying averages pores and
 * streaks away, which end after millimetres, and keeps the ring lines, which run on.
 *
 * Weight of a cell q / (1 + q), q = the energy of the lines that reach the row over the usual
 * difference; cells that no line reaches have weight 0.
 */
export function carriedMap(
  source: Plane,
  pxPerMm: number,
  direction: Direction,
  cellPx: number,
  columns: number,
): { value: Float32Array; weight: Float32Array } {
  const stride = 2;
  const perRow = Math.floor((columns * 4 * cellPx) / stride);
  const rows = source.height;
  const up = carried(source, pxPerMm, direction, stride, perRow, -1);
  const down = carried(source, pxPerMm, direction, stride, perRow, 1);
  const difference = new Float32Array(columns * rows);
  const lines = new Float32Array(columns * rows);
  const perColumn = perRow / columns;
  const shading = Math.max(1, Math.round((shadingMm / 2) * (pxPerMm / stride)));
  const sums = new Float64Array(perRow + 1);
  const counts = new Int32Array(perRow + 1);
  for (let y = 0; y < rows; y++) {
    for (let i = 0; i < perRow; i++) {
      const both = up[y * perRow + i] + down[y * perRow + i];
      const told = !Number.isNaN(both);
      sums[i + 1] = sums[i] + (told ? both / 2 : 0);
      counts[i + 1] = counts[i] + (told ? 1 : 0);
    }
    for (let c = 0; c < columns; c++) {
      let d = 0;
      let l = 0;
      for (let i = Math.round(c * perColumn); i < Math.round((c + 1) * perColumn); i++) {
        const a = up[y * perRow + i];
        const b = down[y * perRow + i];
        if (Number.isNaN(a + b)) continue;
        const from = Math.max(0, i - shading);
        const to = Math.min(perRow, i + shading);
        const ground = (sums[to] - sums[from]) / (counts[to] - counts[from]);
        d += (a - b) ** 2;
        l += ((a + b) / 2 - ground) ** 2;
      }
      difference[y * columns + c] = d / perColumn;
      lines[y * columns + c] = l / perColumn;
    }
  }
  return logRatioMap(difference, lines, columns, rows, pxPerMm, innerMm);
}

/** One side of every row carried along its grain to the row; NaN where no line reaches it. */
function carried(
  source: Plane,
  pxPerMm: number,
  d: Direction,
  stride: number,
  perRow: number,
  side: -1 | 1,
): Float32Array {
  const { width, height, data } = source;
  const out = new Float32Array(perRow * height);
  const step = stepMm * pxPerMm;
  const steps = Math.round(wayMm / stepMm);
  const near = nearMm * pxPerMm;
  const far = farMm * pxPerMm;
  const shift = Math.round(side * sideMm * pxPerMm);
  for (let y = 0; y < height; y++) {
    const by = blockIndex(y + shift, d.blockPx, d.blocks.height) * d.blocks.width;
    for (let i = 0; i < perRow; i++) {
      let x = i * stride;
      let depth = 0;
      let sum = 0;
      let weight = 0;
      for (let k = 0; k < steps; k++) {
        const b = by + blockIndex(x, d.blockPx, d.blocks.width);
        const inward = d.sin[b] * side >= 0 ? step : -step;
        const slant = Math.abs(d.sin[b]);
        const part = Math.min(1, (0.45 * pxPerMm) / (slant * step + 1e-6));
        x += part * inward * d.cos[b];
        depth += part * step * slant;
        if (depth > far || x < 0 || x >= width - 1) break;
        if (depth < near) continue;
        const py = y + side * depth;
        if (py < 0 || py >= height - 1) break;
        const j = (py | 0) * width + (x | 0);
        const fx = x - (x | 0);
        const fy = py - (py | 0);
        const top = data[j] + fx * (data[j + 1] - data[j]);
        const bottom = data[j + width] + fx * (data[j + width + 1] - data[j + width]);
        const w = 1 - k / steps;
        sum += w * (top + fy * (bottom - top));
        weight += w;
      }
      out[y * perRow + i] = weight > 0 ? sum / weight : Number.NaN;
    }
  }
  return out;
}

const blockIndex = (px: number, blockPx: number, count: number) =>
  Math.min(count - 1, Math.max(0, Math.floor(px / blockPx)));
