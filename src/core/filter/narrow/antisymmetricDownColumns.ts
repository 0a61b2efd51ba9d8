/**
 * Takes the slope down the columns with 13 taps: sixteen rows in, four rows out.
 *
 * @param rows where the sixteen rows are.
 * @param starts index of each row's first value, from the top.
 * @param out receives four rows of `width` values from `start`.
 * @param weights 0 and the six weights to the right of the middle (7 values).
 */
export function antisymmetricDownColumns(
  rows: Float64Array,
  starts: Int32Array,
  out: Float32Array,
  start: number,
  width: number,
  weights: Float64Array,
): void {
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
      w1 * (a7 - a5) +
      w2 * (a8 - a4) +
      w3 * (a9 - a3) +
      w4 * (a10 - a2) +
      w5 * (a11 - a1) +
      w6 * (a12 - a0);
    out[i + width] =
      w1 * (a8 - a6) +
      w2 * (a9 - a5) +
      w3 * (a10 - a4) +
      w4 * (a11 - a3) +
      w5 * (a12 - a2) +
      w6 * (a13 - a1);
    out[i + 2 * width] =
      w1 * (a9 - a7) +
      w2 * (a10 - a6) +
      w3 * (a11 - a5) +
      w4 * (a12 - a4) +
      w5 * (a13 - a3) +
      w6 * (a14 - a2);
    out[i + 3 * width] =
      w1 * (a10 - a8) +
      w2 * (a11 - a7) +
      w3 * (a12 - a6) +
      w4 * (a13 - a5) +
      w5 * (a14 - a4) +
      w6 * (a15 - a3);
  }
}
