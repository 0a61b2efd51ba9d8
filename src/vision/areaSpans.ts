/** Which source pixels make up each output pixel along one axis, and with what share. */
export interface AreaSpans {
  /** First source pixel of output pixel i. */
  readonly first: Int32Array;
  /** Last source pixel of output pixel i, inclusive. */
  readonly last: Int32Array;
  /** Share of the first pixel, of each pixel between, and of the last; they sum to 1. */
  readonly firstShare: Float32Array;
  readonly middleShare: number;
  readonly lastShare: Float32Array;
}

/** The spans that average `from` pixels down to `to` pixels, `to` at most `from`. */
export function areaSpans(from: number, to: number): AreaSpans {
  const step = from / to;
  const spans = {
    first: new Int32Array(to),
    last: new Int32Array(to),
    firstShare: new Float32Array(to),
    middleShare: 1 / step,
    lastShare: new Float32Array(to),
  };
  for (let i = 0; i < to; i++) {
    const begin = (i * from) / to;
    const end = ((i + 1) * from) / to;
    const first = Math.floor(begin);
    const last = Math.min(from, Math.ceil(end)) - 1;
    spans.first[i] = first;
    spans.last[i] = last;
    spans.firstShare[i] = first === last ? 1 : (first + 1 - begin) / step;
    spans.lastShare[i] = first === last ? 0 : (end - last) / step;
  }
  return spans;
}
