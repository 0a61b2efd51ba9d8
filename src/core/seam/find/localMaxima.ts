/** A candidate line that beats every line near it. */
export interface LocalMaximum {
  readonly row: number;
  readonly tilt: number;
  readonly value: number;
}

/**
 * Lines stronger, at their best tilt, than any line within `reachRows` of them: the separate tries
 * that a board offers. The flanks of one strong line are no tries of their own.
 *
 * @param values evidence [tilt * rows + row]; NaN = no such line. @param edgeRows left out at both ends.
 */
export function localMaxima(
  values: Float32Array,
  rows: number,
  reachRows: number,
  edgeRows: number,
): LocalMaximum[] {
  const tilts = values.length / rows;
  const best = new Float32Array(rows).fill(Number.NEGATIVE_INFINITY);
  const at = new Int16Array(rows);
  for (let tilt = 0; tilt < tilts; tilt++) {
    for (let row = edgeRows; row < rows - edgeRows; row++) {
      const value = values[tilt * rows + row];
      if (value > best[row]) {
        best[row] = value;
        at[row] = tilt;
      }
    }
  }
  const out: LocalMaximum[] = [];
  for (let row = edgeRows; row < rows - edgeRows; row++) {
    if (best[row] === Number.NEGATIVE_INFINITY || beaten(best, row, reachRows)) continue;
    out.push({ row, tilt: at[row], value: best[row] });
  }
  return out;
}

/** Whether a stronger line, or an equal one before it, lies within reach. */
function beaten(best: Float32Array, row: number, reach: number): boolean {
  const from = Math.max(0, row - reach);
  const to = Math.min(best.length - 1, row + reach);
  for (let other = from; other <= to; other++) {
    if (best[other] > best[row] || (best[other] === best[row] && other < row)) return true;
  }
  return false;
}
