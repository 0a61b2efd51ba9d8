import { createPlane, type Plane } from '../../image/plane.js';

/** Means over `columnPx` pixels along x, row by row: what a stretch of a seam along x sees. */
export function columnMeans(source: Plane, columnPx: number, columns: number): Plane {
  const out = createPlane(columns, source.height);
  for (let y = 0; y < source.height; y++) {
    for (let c = 0, i = y * source.width; c < columns; c++) {
      let sum = 0;
      for (let end = i + columnPx; i < end; i++) sum += source.data[i];
      out.data[y * columns + c] = sum / columnPx;
    }
  }
  return out;
}
