/**
 * Takes the slope along one row with 13 taps, four pixels to sixteen reads.
 *
 * @param padded the row with six more values at each end.
 * @param out receives `length` values from `start`; length a multiple of 4.
 * @param weights 0 and the six weights to the right of the middle (7 values).
 */
export function antisymmetricAlongRow(
  padded: Float64Array,
  out: Float64Array,
  start: number,
  length: number,
  weights: Float64Array,
): void {
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
      w1 * (a7 - a5) +
      w2 * (a8 - a4) +
      w3 * (a9 - a3) +
      w4 * (a10 - a2) +
      w5 * (a11 - a1) +
      w6 * (a12 - a0);
    out[i + 1] =
      w1 * (a8 - a6) +
      w2 * (a9 - a5) +
      w3 * (a10 - a4) +
      w4 * (a11 - a3) +
      w5 * (a12 - a2) +
      w6 * (a13 - a1);
    out[i + 2] =
      w1 * (a9 - a7) +
      w2 * (a10 - a6) +
      w3 * (a11 - a5) +
      w4 * (a12 - a4) +
      w5 * (a13 - a3) +
      w6 * (a14 - a2);
    out[i + 3] =
      w1 * (a10 - a8) +
      w2 * (a11 - a7) +
      w3 * (a12 - a6) +
      w4 * (a13 - a5) +
      w5 * (a14 - a4) +
      w6 * (a15 - a3);
  }
}
