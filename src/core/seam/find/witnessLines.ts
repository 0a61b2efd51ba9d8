import type { RandomSource } from '../../random/randomSource.js';
import { type CellRegion, type LineScan, lineScan } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';
import { shiftedColumns } from './shiftedColumns.js';
import { slopesAround } from './slopesAround.js';

const blocksPerSeam = 12;
const shuffles = 4;
/** Middle of the lines that no saw cut follows, rad (7.5 deg). */
const offTheSawRad = 0.131;

/** Half of the tilts serve for the witnesses: neighbours say nearly the same. */
const everySecond = (slopes: readonly number[]) => slopes.filter((_, i) => i % 2 === 0);

/** Lines as long as the region that no saw cut follows, tilted off to either side. */
export function tiltedLines(
  maps: SeamMaps,
  region: CellRegion,
  tiltRad: number,
  edgeRows: number,
): LineScan[] {
  const columns = region.col1 - region.col0;
  return [-offTheSawRad, offTheSawRad].map((middleRad) => {
    const slopes = everySecond(slopesAround(maps, columns, middleRad, tiltRad));
    return lineScan(maps, region, slopes, edgeRows);
  });
}

/** Lines of the same board with its blocks moved across it one by one. */
export function shuffledLines(
  maps: SeamMaps,
  region: CellRegion,
  slopes: readonly number[],
  edgeRows: number,
  random: RandomSource,
): LineScan[] {
  const rows = region.row1 - region.row0;
  const perBlock = Math.max(1, Math.ceil((region.col1 - region.col0) / blocksPerSeam));
  return Array.from({ length: shuffles }, () => {
    const shift = new Int32Array(maps.columns);
    for (let c = region.col0; c < region.col1; c++) {
      const first = (c - region.col0) % perBlock === 0;
      shift[c] = first ? random.integer(rows) : shift[c - 1];
    }
    return lineScan(shiftedColumns(maps, region, shift), region, everySecond(slopes), edgeRows);
  });
}
