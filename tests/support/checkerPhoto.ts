import type { PointPx } from '../../src/core/image/pointPx.js';
import type { RgbImage } from '../../src/core/image/rgbImage.js';

/** Solves A x = b by elimination with pivoting: a plain second way to find a homography. */
export function solveLinear(rows: number[][], right: number[]): number[] {
  const n = right.length;
  const m = rows.map((row, i) => [...row, right[i]]);
  for (let col = 0; col < n; col++) {
    const pivot = m.reduce(
      (best, row, i) => (i >= col && Math.abs(row[col]) > Math.abs(m[best][col]) ? i : best),
      col,
    );
    [m[col], m[pivot]] = [m[pivot], m[col]];
    for (let i = 0; i < n; i++) {
      if (i === col) continue;
      const factor = m[i][col] / m[col][col];
      for (let k = col; k <= n; k++) m[i][k] -= factor * m[col][k];
    }
  }
  return m.map((row, i) => row[n] / row[i]);
}

/** The homography that takes four places to four others, by the eight linear equations. */
export function homographyByEquations(from: readonly PointPx[], to: readonly PointPx[]): number[] {
  const rows: number[][] = [];
  const right: number[] = [];
  from.forEach(({ x, y }, i) => {
    const { x: u, y: v } = to[i];
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]);
    right.push(u, v);
  });
  return [...solveLinear(rows, right), 1];
}

/** Applies a 3 x 3 map by rows. */
export function mapPoint(h: readonly number[], x: number, y: number): PointPx {
  const w = h[6] * x + h[7] * y + h[8];
  return { x: (h[0] * x + h[1] * y + h[2]) / w, y: (h[3] * x + h[4] * y + h[5]) / w };
}

/** Paints a picture of a flat scene: `shade(xMm, yMm)` 0..255 where the panel is, `around` elsewhere. */
export function photographFlat(options: {
  readonly width: number;
  readonly height: number;
  readonly photoToPanel: readonly number[];
  readonly shade: (xMm: number, yMm: number) => number;
  readonly samples?: number;
}): RgbImage {
  const { width, height, photoToPanel, shade, samples = 3 } = options;
  const data = new Uint8Array(3 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let i = 0; i < samples; i++) {
        for (let j = 0; j < samples; j++) {
          const at = mapPoint(photoToPanel, x + (i + 0.5) / samples, y + (j + 0.5) / samples);
          sum += shade(at.x, at.y);
        }
      }
      data.fill(Math.round(sum / samples ** 2), 3 * (y * width + x), 3 * (y * width + x) + 3);
    }
  }
  return { width, height, data };
}
