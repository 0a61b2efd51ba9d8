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
  const bins = new Filling(u, binMm);
  for (let n = 0; n < u.length; n++) {
    const du = n > 0 ? u[n] - u[n - 1] : u[0];
    if (Number.isNaN(a[n]) || Number.isNaN(b[n]) || du <= 0) continue;
    bins.add(a[n], b[n], u[n], du);
  }
  return bins.filled();
}

/** The same in wider bins, whose width is a whole multiple of what they are made of. */
export function mergedBins({ a, b, u, du }: ProfileBins, binMm: number): ProfileBins {
  const bins = new Filling(u, binMm);
  for (let n = 0; n < u.length; n++) bins.add(a[n], b[n], u[n], du[n]);
  return bins.filled();
}

/** Bins on their way to be filled, from the first place on. */
class Filling {
  private readonly a: Float64Array;
  private readonly b: Float64Array;
  private readonly u: Float64Array;
  private readonly du: Float64Array;
  private last = -1;
  private bin = Number.NEGATIVE_INFINITY;

  constructor(
    u: Float64Array,
    private readonly binMm: number,
  ) {
    const spanMm = u.length > 0 ? u[u.length - 1] - u[0] : 0;
    const most = Math.min(u.length, Math.ceil(spanMm / binMm) + 2);
    this.a = new Float64Array(most);
    this.b = new Float64Array(most);
    this.u = new Float64Array(most);
    this.du = new Float64Array(most);
  }

  add(a: number, b: number, u: number, du: number): void {
    const bin = Math.floor(u / this.binMm);
    if (bin !== this.bin) {
      this.bin = bin;
      this.last++;
    }
    const i = this.last;
    this.a[i] += du * a;
    this.b[i] += du * b;
    this.u[i] += du * u;
    this.du[i] += du;
  }

  /** Means of all bins that hold anything. */
  filled(): ProfileBins {
    const { a, b, u, du } = this;
    const count = this.last + 1;
    for (let i = 0; i < count; i++) {
      a[i] /= du[i];
      b[i] /= du[i];
      u[i] /= du[i];
    }
    const first = (row: Float64Array) => row.subarray(0, count);
    return { a: first(a), b: first(b), u: first(u), du: first(du) };
  }
}
