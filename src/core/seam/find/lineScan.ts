import type { CueMap, SeamMaps } from './seamMaps.js';

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
 * @param rowShift optional: rows by which each column is displaced (for the shuffled null).
 */
export function lineScan(
  maps: SeamMaps,
  region: CellRegion,
  slopes: readonly number[],
  edgeRows = 0,
  rowShift?: Int32Array,
): LineScan {
  const rows = region.row1 - region.row0;
  const sum = maps.cues.map((cue) => {
    const out = new Float32Array(slopes.length * rows);
    slopes.forEach((slope, t) => {
      sumTilted(
        maps,
        cue,
        region,
        slope,
        edgeRows,
        rowShift,
        out.subarray(t * rows, (t + 1) * rows),
      );
    });
    return out;
  });
  return { region, slopes, rows, sum };
}

function sumTilted(
  maps: SeamMaps,
  cue: CueMap,
  region: CellRegion,
  slope: number,
  edgeRows: number,
  rowShift: Int32Array | undefined,
  out: Float32Array,
): void {
  const rows = out.length;
  const columns = region.col1 - region.col0;
  const middle = (region.col0 + region.col1 - 1) / 2;
  const leanOf = (c: number) => Math.round(slope * (c - middle));
  // Columns lean evenly: a line that stays inside at both ends stays inside.
  const leans = [leanOf(region.col0), leanOf(region.col1 - 1)];
  const from = Math.max(0, edgeRows - Math.min(...leans));
  const to = Math.min(rows, rows - edgeRows - Math.max(...leans));
  out.fill(Number.NaN);
  if (from >= to) return;
  out.fill(0, from, to);
  for (let c = region.col0; c < region.col1; c++) {
    const shift = leanOf(c) + (rowShift ? rowShift[c] : 0);
    const first = c * maps.rows + region.row0 + shift;
    // Rows beyond the region's end come back in at its start: two runs without a test inside.
    const wrap = Math.min(to, Math.max(from, rows - shift));
    addRun(cue.value, first, from, wrap, out);
    addRun(cue.value, first - rows, wrap, to, out);
  }
  if (cue.cue === 'strangers' || cue.cue === 'stepped') return;
  for (let r = from; r < to; r++) out[r] /= columns;
}

function addRun(
  value: Float32Array,
  start: number,
  from: number,
  to: number,
  out: Float32Array,
): void {
  for (let r = from; r < to; r++) out[r] += value[start + r];
}
