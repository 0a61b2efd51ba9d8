/**
 * The value that would stand at place n if the values were sorted, in a fraction of the time.
 *
 * @param values numbers, none of them NaN; reordered in place.
 * @param n counted from 0; the largest value from values.length - 1 on.
 * Source: Hoare 1961, Comm. ACM 4(7), algorithm 65 (FIND).
 */
export function nthSmallest(values: Float32Array | Float64Array, n: number): number {
  let left = 0;
  let right = values.length - 1;
  const place = Math.min(right, n);
  while (left < right) {
    const pivot = values[place];
    let i = left;
    let j = right;
    while (i <= j) {
      while (values[i] < pivot) i++;
      while (values[j] > pivot) j--;
      if (i > j) break;
      const swapped = values[i];
      values[i++] = values[j];
      values[j--] = swapped;
    }
    if (j < place) left = i;
    if (i > place) right = j;
  }
  return values[place];
}
