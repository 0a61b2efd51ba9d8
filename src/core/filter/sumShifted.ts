/**
 * out[outStart + x] = sum over taps of weights[t] data[starts[t] + x], for x below length.
 *
 * The inner loop of every convolution here: along a row the starts are neighbours, down a
 * column they are rows. Four taps at a time keep the additions in registers.
 *
 * @param starts where each tap's run of `length` values begins in `data`.
 * @param weights one weight a tap.
 */
export function sumShifted(
  out: Float32Array,
  outStart: number,
  length: number,
  data: Float32Array,
  starts: Int32Array,
  weights: Float64Array,
): void {
  const first = weights.length % 4 || 4;
  out.fill(0, outStart, outStart + length);
  for (let t = 0; t < weights.length; t += t === 0 ? first : 4) {
    const taps = t === 0 ? first : 4;
    const w0 = weights[t];
    const w1 = taps > 1 ? weights[t + 1] : 0;
    const w2 = taps > 2 ? weights[t + 2] : 0;
    const w3 = taps > 3 ? weights[t + 3] : 0;
    let i0 = starts[t];
    let i1 = taps > 1 ? starts[t + 1] : i0;
    let i2 = taps > 2 ? starts[t + 2] : i0;
    let i3 = taps > 3 ? starts[t + 3] : i0;
    for (let i = outStart, end = outStart + length; i < end; i++) {
      out[i] += w0 * data[i0++] + w1 * data[i1++] + w2 * data[i2++] + w3 * data[i3++];
    }
  }
}
