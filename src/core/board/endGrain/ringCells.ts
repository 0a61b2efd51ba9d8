import { gaussianGradient } from '../../filter/gaussianGradient.js';
import type { Plane } from '../../image/plane.js';
import type { RingFamily } from './ringFamily.js';

/** How the rings run in one cell of an end, against a family of circles. */
export interface RingCell {
  readonly xMm: number;
  readonly yMm: number;
  /** Direction across the rings less the family's, rad. */
  readonly offRad: number;
  /** Standard error of `offRad` from the scatter of the cell's parts, rad. */
  readonly seRad: number;
  /** Steepness kept, for weights of profiles: share of slope that runs across the family. */
  readonly share: number;
}

/** Slopes whose mean direction is told worse than this say nothing, rad (17 deg). */
const mostSeRad = 0.3;
const marginMm = 1.2;
const partMm = 1.25;

/**
 * Mean ring direction in square cells, from slopes doubled in angle, each turned into the family's
 * frame first so that rings which bend within a cell do not blur it:
 *
 *     off = atan2(sum w sin 2r, sum w cos 2r) / 2,  r = slope direction - family's, w = slope^2
 *
 * w is capped at a few times the usual, so that a crack or a pitch pocket has no more say than a
 * ring. Rays run square to the rings: they lower the sum of cosines and turn nothing.
 *
 * @param cellMm side of a cell. @param sigmaMm scale of the slopes.
 */
export function ringCells(
  plane: Plane,
  pxPerMm: number,
  family: RingFamily,
  { cellMm, sigmaMm }: { readonly cellMm: number; readonly sigmaMm: number },
): RingCell[] {
  const { width, height, gx, gy } = gaussianGradient(plane, Math.max(0.9, sigmaMm * pxPerMm));
  const cap = capShare * medianSquare(gx, gy);
  const innerWidthMm = width / pxPerMm - 2 * marginMm;
  const innerHeightMm = height / pxPerMm - 2 * marginMm;
  const columns = Math.max(1, Math.round(innerWidthMm / cellMm));
  const rows = Math.max(1, Math.round(innerHeightMm / cellMm));
  const parts = Math.max(2, Math.round(cellMm / partMm));
  const across = columns * parts;
  const down = rows * parts;
  const sine = new Float64Array(across * down);
  const cosine = new Float64Array(across * down);
  const total = new Float64Array(across * down);
  const { cxMm, cyMm, normalRad, curvature } = family;
  const [nx, ny] = [Math.cos(normalRad), Math.sin(normalRad)];
  const margin = Math.round(marginMm * pxPerMm);
  for (let py = margin; py < height - margin; py++) {
    const yMm = (py + 0.5) / pxPerMm;
    const j = Math.min(down - 1, Math.floor(((yMm - marginMm) / innerHeightMm) * down));
    for (let px = margin; px < width - margin; px++) {
      const xMm = (px + 0.5) / pxPerMm;
      const i = Math.min(across - 1, Math.floor(((xMm - marginMm) / innerWidthMm) * across));
      const k = py * width + px;
      const [a, b] = [gx[k], gy[k]];
      const square = a * a + b * b;
      const vx = nx - curvature * (xMm - cxMm);
      const vy = ny - curvature * (yMm - cyMm);
      const v2 = vx * vx + vy * vy;
      if (square === 0 || v2 < 1e-9) continue;
      const along = a * vx + b * vy;
      const aside = b * vx - a * vy;
      const w = Math.min(square, cap) / (square * v2);
      const part = j * across + i;
      cosine[part] += w * (along * along - aside * aside);
      sine[part] += w * 2 * along * aside;
      total[part] += Math.min(square, cap);
    }
  }
  const cells: RingCell[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      let [s, c, t] = [0, 0, 0];
      const each = (use: (part: number) => void) => {
        for (let j = 0; j < parts; j++)
          for (let i = 0; i < parts; i++) use((row * parts + j) * across + column * parts + i);
      };
      each((part) => {
        s += sine[part];
        c += cosine[part];
        t += total[part];
      });
      const off = Math.atan2(s, c) / 2;
      let spread = 0;
      each((part) => {
        const aside = sine[part] * Math.cos(2 * off) - cosine[part] * Math.sin(2 * off);
        spread += aside * aside;
      });
      const seRad = Math.sqrt(spread) / (2 * Math.hypot(s, c) + 1e-12);
      if (t === 0 || !(seRad < mostSeRad)) continue;
      cells.push({
        xMm: marginMm + ((column + 0.5) * innerWidthMm) / columns,
        yMm: marginMm + ((row + 0.5) * innerHeightMm) / rows,
        offRad: off,
        seRad,
        share: c / (t || 1),
      });
    }
  }
  return cells;
}

/** Slopes above so many times the median square have no more say. */
const capShare = 8;

function medianSquare(gx: Float32Array, gy: Float32Array): number {
  const squares: number[] = [];
  for (let i = 0; i < gx.length; i += 13) squares.push(gx[i] * gx[i] + gy[i] * gy[i]);
  squares.sort((a, b) => a - b);
  return squares[squares.length >> 1] ?? 0;
}
