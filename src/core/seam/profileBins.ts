/** Both profiles averaged over short pieces of the across-grain coordinate. */
export interface ProfileBins {
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly u: Float64Array;
  /** Wood across the grain that each bin holds, mm. */
  readonly du: Float64Array;
}

/**
 * Averages both profiles over bins of the across-grain coordinate: grain nearly along the seam is
 * sampled far finer than its coarse bands need.
 *
 * @param a, b profiles of the two sides; NaN = unread, left out. @param u growing, mm.
 * @param binMm width of a bin, mm.
 */
export function binProfiles(
  a: Float64Array,
  b: Float64Array,
  u: Float64Array,
  binMm: number,
): ProfileBins {
  const told = emptyBins(u.length);
  let count = 0;
  for (let n = 0; n < u.length; n++) {
    const du = n > 0 ? u[n] - u[n - 1] : u[0];
    if (Number.isNaN(a[n]) || Number.isNaN(b[n]) || du <= 0) continue;
    told.a[count] = a[n];
    told.b[count] = b[n];
    told.u[count] = u[n];
    told.du[count] = du;
    count++;
  }
  return mergedBins(firstOf(told, count), binMm);
}

/** The same in wider bins, whose width is a whole multiple of what they are made of. */
export function mergedBins(fine: ProfileBins, binMm: number): ProfileBins {
  const bins = emptyBins(fine.u.length);
  let count = -1;
  let bin = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < fine.u.length; n++) {
    const du = fine.du[n];
    const k = Math.floor(fine.u[n] / binMm);
    if (k !== bin) {
      bin = k;
      count++;
    }
    bins.a[count] += du * fine.a[n];
    bins.b[count] += du * fine.b[n];
    bins.u[count] += du * fine.u[n];
    bins.du[count] += du;
  }
  for (let i = 0; i <= count; i++) {
    bins.a[i] /= bins.du[i];
    bins.b[i] /= bins.du[i];
    bins.u[i] /= bins.du[i];
  }
  return firstOf(bins, count + 1);
}

function emptyBins(length: number): ProfileBins {
  const row = () => new Float64Array(length);
  return { a: row(), b: row(), u: row(), du: row() };
}

function firstOf({ a, b, u, du }: ProfileBins, count: number): ProfileBins {
  const first = (row: Float64Array) => row.subarray(0, count);
  return { a: first(a), b: first(b), u: first(u), du: first(du) };
}
