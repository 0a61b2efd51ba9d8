/** Middle value. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/** Spearman's rank correlation, ties sharing their mean rank. */
export function rankCorrelation(a: readonly number[], b: readonly number[]): number {
  const [x, y] = [ranks(a), ranks(b)];
  const mean = (x.length - 1) / 2;
  let [xy, xx, yy] = [0, 0, 0];
  x.forEach((rank, i) => {
    xy += (rank - mean) * (y[i]! - mean);
    xx += (rank - mean) ** 2;
    yy += (y[i]! - mean) ** 2;
  });
  return xy / Math.sqrt(xx * yy);
}

function ranks(values: readonly number[]): number[] {
  const order = values.map((value, i) => ({ value, i })).sort((a, b) => a.value - b.value);
  const out = new Array<number>(values.length);
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to < order.length && order[to]!.value === order[from]!.value) to++;
    for (let k = from; k < to; k++) out[order[k]!.i] = (from + to - 1) / 2;
    from = to;
  }
  return out;
}

/** How two sets of V agree. */
export interface Agreement {
  readonly rips: number;
  readonly rank: number;
  /** Median |ln V - ln V'|, V below 0.25 (far below visible, where ln runs away) counted as 0.25. */
  readonly lnAll: number;
  /** The same over those with both at least 0.5, and how many these are. */
  readonly lnSeen: number;
  readonly seen: number;
}

export function agreement(pairs: readonly (readonly [number, number])[]): Agreement {
  const ln = (v: number) => Math.log(Math.max(0.25, v));
  const apart = (some: typeof pairs) => median(some.map(([a, b]) => Math.abs(ln(a) - ln(b))));
  const seen = pairs.filter(([a, b]) => a >= 0.5 && b >= 0.5);
  return {
    rips: pairs.length,
    rank: rankCorrelation(
      pairs.map(([a]) => a),
      pairs.map(([, b]) => b),
    ),
    lnAll: apart(pairs),
    lnSeen: apart(seen),
    seen: seen.length,
  };
}
