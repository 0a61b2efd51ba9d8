/**
 * out[outStart + x] = sum over taps of weights[t] data[starts[t] + x], for x below length.
 *
 * The inner loop of every convolution here: along a row the starts are neighbours, down a
 * column they are rows. Seven taps at a time keep the additions in registers.
 *
 * @param out receives the sums; must not overlap `data`.
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
  const w = new Float64Array(7);
  const s = new Int32Array(7);
  for (let t = 0; t < weights.length; t += 7) {
    w.fill(0).set(weights.subarray(t, t + 7));
    s.fill(starts[0]).set(starts.subarray(t, t + 7));
    if (t > 0) addSeven(out, outStart, length, data, s, w);
    else writeSeven(out, outStart, length, data, s, w);
  }
}

function writeSeven(
  out: Float32Array,
  outStart: number,
  length: number,
  data: Float32Array,
  starts: Int32Array,
  weights: Float64Array,
): void {
  const s0 = starts[0];
  const s1 = starts[1];
  const s2 = starts[2];
  const s3 = starts[3];
  const s4 = starts[4];
  const s5 = starts[5];
  const s6 = starts[6];
  const w0 = weights[0];
  const w1 = weights[1];
  const w2 = weights[2];
  const w3 = weights[3];
  const w4 = weights[4];
  const w5 = weights[5];
  const w6 = weights[6];
  for (let x = 0; x < length; x++) {
    out[outStart + x] =
      w0 * data[s0 + x] +
      w1 * data[s1 + x] +
      w2 * data[s2 + x] +
      w3 * data[s3 + x] +
      w4 * data[s4 + x] +
      w5 * data[s5 + x] +
      w6 * data[s6 + x];
  }
}

function addSeven(
  out: Float32Array,
  outStart: number,
  length: number,
  data: Float32Array,
  starts: Int32Array,
  weights: Float64Array,
): void {
  const s0 = starts[0];
  const s1 = starts[1];
  const s2 = starts[2];
  const s3 = starts[3];
  const s4 = starts[4];
  const s5 = starts[5];
  const s6 = starts[6];
  const w0 = weights[0];
  const w1 = weights[1];
  const w2 = weights[2];
  const w3 = weights[3];
  const w4 = weights[4];
  const w5 = weights[5];
  const w6 = weights[6];
  for (let x = 0; x < length; x++) {
    out[outStart + x] +=
      w0 * data[s0 + x] +
      w1 * data[s1 + x] +
      w2 * data[s2 + x] +
      w3 * data[s3 + x] +
      w4 * data[s4 + x] +
      w5 * data[s5 + x] +
      w6 * data[s6 + x];
  }
}
