/**
 * Where a pixel beyond the border is read: the picture is mirrored about its outer edge,
 * d c b a | a b c d | d c b a, so that averages of border pixels mirror likewise.
 *
 * @param index any whole number.
 * @param length pixels along this axis, 1 or more.
 * @returns index in 0 .. length - 1.
 */
export function reflectIndex(index: number, length: number): number {
  if (index >= 0 && index < length) return index;
  const period = 2 * length;
  const within = ((index % period) + period) % period;
  return within < length ? within : period - 1 - within;
}
