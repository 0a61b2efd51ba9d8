import type { CellRegion } from './lineScan.js';
import type { SeamMaps } from './seamMaps.js';

/**
 * The maps as they would be without one line: its rows show what lies just beyond them. What a
 * board does by chance is not judged with the line that stands before the judge.
 *
 * @param row of the line at the region's middle column. @param slope rows per column.
 */
export function withoutLine(
  maps: SeamMaps,
  region: CellRegion,
  row: number,
  slope: number,
  clearRows: number,
): SeamMaps {
  const middle = (region.col0 + region.col1 - 1) / 2;
  const cues = maps.cues.map((cue) => {
    const value = cue.value.slice();
    for (let c = region.col0; c < region.col1; c++) {
      const at = Math.round(row + slope * (c - middle));
      for (let k = -clearRows; k <= clearRows; k++) {
        const from = at + k + (k < 0 ? -1 : 1) * (clearRows + 1);
        if (at + k < 0 || at + k >= maps.rows) continue;
        const source = Math.min(maps.rows - 1, Math.max(0, from));
        value[c * maps.rows + at + k] = cue.value[c * maps.rows + source];
      }
    }
    return { ...cue, value };
  });
  return { ...maps, cues };
}
