import { boardScale, evidence } from './evidence.js';
import { lineP } from './lineP.js';
import { type CellRegion, lineScan } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';

/** A joint is looked for this near to the line that is asked for, mm. */
const nearMm = 1;
const binMm = 3;

/** The strongest line near a given one, and the chance of such a line where there is no joint. */
export interface NearLine {
  /** Row at the region's middle column. */
  readonly row: number;
  readonly p: number;
}

/**
 * Asks whether a joint runs along one given line of a region: few lines are tried, so less need be
 * seen than when the whole board is searched.
 *
 * @param row of the line at the region's middle column. @param slope rows per column.
 * @returns null where the region is too short or low to judge.
 */
export function lineNear(
  maps: SeamMaps,
  region: CellRegion,
  row: number,
  slope: number,
): NearLine | null {
  const columns = region.col1 - region.col0;
  const rows = region.row1 - region.row0;
  const bin = Math.max(2, Math.round(binMm * maps.rowsPerMm));
  const reach = Math.round(nearMm * maps.rowsPerMm);
  if (columns < 3 || rows < 10 * bin) return null;
  const lean = maps.rowsPerMm / columns;
  const slopes = [slope - lean, slope, slope + lean];
  const scan = lineScan(maps, region, slopes);
  const values = evidence(maps, scan, boardScale(maps, scan, bin, bin));
  const middle = Math.round(row - region.row0);
  let best = { row: middle, value: -1 };
  slopes.forEach((_, t) => {
    for (let r = Math.max(0, middle - reach); r <= Math.min(rows - 1, middle + reach); r++) {
      const value = values[t * rows + r];
      if (value > best.value) best = { row: r, value };
    }
  });
  if (best.value < 0) return null;
  return { row: region.row0 + best.row, p: lineP(best.value) };
}
