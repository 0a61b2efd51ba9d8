/** The strongest candidate of one bin of rows, over all tilts. */
export interface BinMaximum {
  readonly row: number;
  readonly tilt: number;
  readonly value: number;
}

/**
 * The strongest line of every stretch of `binRows` rows, over all tilts: candidates that are far
 * enough apart to be counted as separate tries.
 *
 * @param values evidence [tilt * rows + row]; NaN = no such line. @param edgeRows left out at both ends.
 */
export function binMaxima(
  values: Float32Array,
  rows: number,
  binRows: number,
  edgeRows: number,
): BinMaximum[] {
  const tilts = values.length / rows;
  const out: BinMaximum[] = [];
  for (let start = edgeRows; start + binRows / 2 < rows - edgeRows; start += binRows) {
    const end = Math.min(rows - edgeRows, start + binRows);
    let best: BinMaximum | null = null;
    for (let tilt = 0; tilt < tilts; tilt++) {
      for (let row = start; row < end; row++) {
        const value = values[tilt * rows + row];
        if (value > (best?.value ?? Number.NEGATIVE_INFINITY)) best = { row, tilt, value };
      }
    }
    if (best) out.push(best);
  }
  return out;
}
