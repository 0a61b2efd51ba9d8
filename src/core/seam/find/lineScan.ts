import { sumShifted } from '../../filter/sumShifted.js';
import type { SeamMaps } from './seamMaps.js';

/** A rectangle of the finder's cells: columns col0..col1-1, rows row0..row1-1. */
export interface CellRegion {
  readonly col0: number;
  readonly col1: number;
  readonly row0: number;
  readonly row1: number;
}

/** Every cue summed along every candidate line: `sum[cue][tilt * rows + (row - row0)]`. */
export interface LineScan {
  readonly region: CellRegion;
  /** Rows gained per column. */
  readonly slopes: readonly number[];
  readonly rows: number;
  readonly sum: readonly Float32Array[];
}

/**
 * Sums the cues along all lines that cross the region at `slopes`, one line per row at mid-width.
 *
 * Log likelihood ratios are summed, signed cues averaged. Lines that leave the region stay NaN.
 *
 * @param edgeRows lines that come nearer to the region's first or last row stay NaN.
 */
export function lineScan(
  maps: SeamMaps,
  region: CellRegion,
  slopes: readonly number[],
  edgeRows = 0,
): LineScan {
  const rows = region.row1 - region.row0;
  const columns = region.col1 - region.col0;
  const sum = maps.cues.map(() => new Float32Array(slopes.length * rows).fill(Number.NaN));
  const starts = new Int32Array(columns);
  const ones = new Float64Array(columns).fill(1);
  const shares = new Float64Array(columns).fill(1 / columns);
  slopes.forEach((slope, t) => {
    const lean = (c: number) => Math.round(slope * (c - (columns - 1) / 2));
    // Columns lean evenly: a line that stays inside at both ends stays inside.
    const leans = [lean(0), lean(columns - 1)];
    const from = Math.max(0, edgeRows - Math.min(...leans));
    const to = Math.min(rows, rows - edgeRows - Math.max(...leans));
    if (from >= to) return;
    for (let c = 0; c < columns; c++) {
      starts[c] = (region.col0 + c) * maps.rows + region.row0 + lean(c) + from;
    }
    maps.cues.forEach(({ cue, value }, k) => {
      const weights = cue === 'strangers' || cue === 'stepped' ? ones : shares;
      sumShifted(sum[k], t * rows + from, to - from, value, starts, weights);
    });
  });
  return { region, slopes, rows, sum };
}
