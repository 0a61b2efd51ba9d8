/**
 * Names rails from top to bottom: upper rail, middle rail (1, 2, …), lower rail.
 * @param index 0 for the uppermost
 * @param count how many rails there are, 2 or more
 */
export function railName(index: number, count: number): string {
  if (index === 0) return 'upper rail';
  if (index === count - 1) return 'lower rail';
  return count === 3 ? 'middle rail' : `middle rail ${index}`;
}
