import type { CellRegion } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';

/**
 * The maps with every column of a region moved along the board by its own number of rows; what
 * leaves the region at one end comes back in at the other.
 *
 * @param shift rows by column of the maps: row r then shows what row r + shift showed, 0 or more.
 */
export function shiftedColumns(maps: SeamMaps, region: CellRegion, shift: Int32Array): SeamMaps {
  const rows = region.row1 - region.row0;
  const cues = maps.cues.map((cue) => {
    const value = cue.value.slice();
    for (let c = region.col0; c < region.col1; c++) {
      const [from, to] = [c * maps.rows + region.row0, c * maps.rows + region.row1];
      const turn = shift[c] % rows;
      value.set(cue.value.subarray(from + turn, to), from);
      value.set(cue.value.subarray(from, from + turn), to - turn);
    }
    return { ...cue, value };
  });
  return { ...maps, cues };
}
