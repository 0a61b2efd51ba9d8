import type { SeamMaps } from './seamMaps.js';

/** Slopes in rows per column, finely enough that a line's ends move by 0.9 mm from one to the next. */
export function slopesAround(
  maps: SeamMaps,
  columns: number,
  middleRad: number,
  tiltRad: number,
): number[] {
  const halfMm = (columns * maps.columnMm) / 2;
  const count = Math.min(30, Math.max(1, Math.ceil((tiltRad * halfMm) / 0.9)));
  const rowsPerColumn = maps.columnMm * maps.rowsPerMm;
  return Array.from(
    { length: 2 * count + 1 },
    (_, i) => Math.tan(middleRad + (tiltRad * (i - count)) / count) * rowsPerColumn,
  );
}
