/**
 * Smooths down the columns with 13 taps: sixteen rows in, four rows out.
 *
 * @param rows where the sixteen rows are.
 * @param starts index of each row's first value, from the top.
 * @param out receives four rows of `width` values from `start`.
 * @param weights middle weight and the six beside it (7 values).
 */
export function symmetricDownColumns(
  rows: Float64Array,
  starts: Int32Array,
  out: Float32Array,
  start: number,
  width: number,
  weights: Float64Array,
): void {
  const w0 = weights[0];
  const w1 = weights[1];
  const w2 = weights[2];
  const w3 = weights[3];
  const w4 = weights[4];
  const w5 = weights[5];
  const w6 = weights[6];
  const s0 = starts[0];
  const s1 = starts[1];
  const s2 = starts[2];
  const s3 = starts[3];
  const s4 = starts[4];
  const s5 = starts[5];
  const s6 = starts[6];
  const s7 = starts[7];
  const s8 = starts[8];
  const s9 = starts[9];
  const s10 = starts[10];
  const s11 = starts[11];
  const s12 = starts[12];
  const s13 = starts[13];
  const s14 = starts[14];
  const s15 = starts[15];
  for (let x = 0, i = start; x < width; x++, i++) {
    const a0 = rows[s0 + x];
    const a1 = rows[s1 + x];
    const a2 = rows[s2 + x];
    const a3 = rows[s3 + x];
    const a4 = rows[s4 + x];
    const a5 = rows[s5 + x];
    const a6 = rows[s6 + x];
    const a7 = rows[s7 + x];
    const a8 = rows[s8 + x];
    const a9 = rows[s9 + x];
    const a10 = rows[s10 + x];
    const a11 = rows[s11 + x];
    const a12 = rows[s12 + x];
    const a13 = rows[s13 + x];
    const a14 = rows[s14 + x];
    const a15 = rows[s15 + x];
    out[i] =
      w0 * a6 +
      w1 * (a5 + a7) +
      w2 * (a4 + a8) +
      w3 * (a3 + a9) +
      w4 * (a2 + a10) +
      w5 * (a1 + a11) +
      w6 * (a0 + a12);
    out[i + width] =
      w0 * a7 +
      w1 * (a6 + a8) +
      w2 * (a5 + a9) +
      w3 * (a4 + a10) +
      w4 * (a3 + a11) +
      w5 * (a2 + a12) +
      w6 * (a1 + a13);
    out[i + 2 * width] =
      w0 * a8 +
      w1 * (a7 + a9) +
      w2 * (a6 + a10) +
      w3 * (a5 + a11) +
      w4 * (a4 + a12) +
      w5 * (a3 + a13) +
      w6 * (a2 + a14);
    out[i + 3 * width] =
      w0 * a9 +
      w1 * (a8 + a10) +
      w2 * (a7 + a11) +
      w3 * (a6 + a12) +
      w4 * (a5 + a13) +
      w5 * (a4 + a14) +
      w6 * (a3 + a15);
  }
}
