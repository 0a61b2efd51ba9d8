/**
 * Smooths along one row with 13 taps, four pixels to sixteen reads.
 *
 * @param padded the row with six more values at each end.
 * @param out receives `length` values from `start`; length a multiple of 4.
 * @param weights middle weight and the six beside it (7 values).
 */
export function symmetricAlongRow(
  padded: Float64Array,
  out: Float64Array,
  start: number,
  length: number,
  weights: Float64Array,
): void {
  const w0 = weights[0];
  const w1 = weights[1];
  const w2 = weights[2];
  const w3 = weights[3];
  const w4 = weights[4];
  const w5 = weights[5];
  const w6 = weights[6];
  for (let x = 0, i = start; x < length; x += 4, i += 4) {
    const a0 = padded[x];
    const a1 = padded[x + 1];
    const a2 = padded[x + 2];
    const a3 = padded[x + 3];
    const a4 = padded[x + 4];
    const a5 = padded[x + 5];
    const a6 = padded[x + 6];
    const a7 = padded[x + 7];
    const a8 = padded[x + 8];
    const a9 = padded[x + 9];
    const a10 = padded[x + 10];
    const a11 = padded[x + 11];
    const a12 = padded[x + 12];
    const a13 = padded[x + 13];
    const a14 = padded[x + 14];
    const a15 = padded[x + 15];
    out[i] =
      w0 * a6 +
      w1 * (a5 + a7) +
      w2 * (a4 + a8) +
      w3 * (a3 + a9) +
      w4 * (a2 + a10) +
      w5 * (a1 + a11) +
      w6 * (a0 + a12);
    out[i + 1] =
      w0 * a7 +
      w1 * (a6 + a8) +
      w2 * (a5 + a9) +
      w3 * (a4 + a10) +
      w4 * (a3 + a11) +
      w5 * (a2 + a12) +
      w6 * (a1 + a13);
    out[i + 2] =
      w0 * a8 +
      w1 * (a7 + a9) +
      w2 * (a6 + a10) +
      w3 * (a5 + a11) +
      w4 * (a4 + a12) +
      w5 * (a3 + a13) +
      w6 * (a2 + a14);
    out[i + 3] =
      w0 * a9 +
      w1 * (a8 + a10) +
      w2 * (a7 + a11) +
      w3 * (a6 + a12) +
      w4 * (a5 + a13) +
      w5 * (a4 + a14) +
      w6 * (a3 + a15);
  }
}
