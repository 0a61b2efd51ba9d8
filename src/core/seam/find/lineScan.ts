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
  const counts = new Uint16Array(rows);
  const middle = (region.col0 + region.col1 - 1) / 2;
  const { value } = cue;
  for (let c = region.col0; c < region.col1; c++) {
    const lean = Math.round(slope * (c - middle));
    const from = Math.max(0, edgeRows - lean);
    const to = Math.min(rows, rows - edgeRows - lean);
    const turn = rowShift ? rowShift[c] : 0;
    // Rows beyond the region's end come back in at its start: two runs without a test inside.
    const wrap = Math.min(to, Math.max(from, rows - lean - turn));
    const first = (region.row0 + lean + turn) * maps.columns + c;
    add(first, from, wrap);
    add(first - rows * maps.columns, wrap, to);
  }
  function add(start: number, from: number, to: number): void {
    let i = start + from * maps.columns;
    for (let r = from; r < to; r++, i += maps.columns) {
      out[r] += value[i];
      counts[r]++;
    }
  }
  const least = region.col1 - region.col0;
  for (let r = 0; r < rows; r++) {
    if (counts[r] < least) out[r] = Number.NaN;
    else if (cue.cue !== 'strangers' && cue.cue !== 'stepped') out[r] /= counts[r];
  }
}
