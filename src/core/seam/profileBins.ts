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
  const bins = {
    a: new Float64Array(u.length),
    b: new Float64Array(u.length),
    u: new Float64Array(u.length),
    du: new Float64Array(u.length),
  };
  let count = -1;
  let bin = Number.NEGATIVE_INFINITY;
  for (let n = 0; n < u.length; n++) {
    const du = n > 0 ? u[n] - u[n - 1] : u[0];
    if (Number.isNaN(a[n]) || Number.isNaN(b[n]) || du <= 0) continue;
    const k = Math.floor(u[n] / binMm);
    if (k !== bin) {
      bin = k;
      count++;
    }
    bins.a[count] += du * a[n];
    bins.b[count] += du * b[n];
    bins.u[count] += du * u[n];
    bins.du[count] += du;
  }
  for (let i = 0; i <= count; i++) {
    bins.a[i] /= bins.du[i];
    bins.b[i] /= bins.du[i];
    bins.u[i] /= bins.du[i];
  }
  const filled = (values: Float64Array) => values.subarray(0, count + 1);
  return { a: filled(bins.a), b: filled(bins.b), u: filled(bins.u), du: filled(bins.du) };
}
