/**
 * Has four rows written at row y of a picture, leaving out those beyond its last row.
 *
 * @param data the picture; row y starts at y * width.
 * @param write writes four rows of `width` values to `out` from `start`.
 */
export function intoFourRows(
  data: Float32Array,
  width: number,
  y: number,
  write: (out: Float32Array, start: number) => void,
): void {
  const start = y * width;
  const room = data.length - start;
  if (room >= 4 * width) {
    write(data, start);
  } else {
    const out = new Float32Array(4 * width);
    write(out, 0);
    data.set(out.subarray(0, room), start);
  }
}
