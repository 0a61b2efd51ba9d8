/**
 * The step that all the wood on two sides of a line has in common, light and dark alike.
 *
 * Both sides' stretches are put in order from dark to light and compared rank by rank. Another
 * board is lighter or darker in every rank; more latewood on one side moves the middle ranks only.
 * What is told is the mean over the third of the ranks that moved least, in the sense of them all.
 *
 * @param a, b one number for every stretch, as many on either side.
 * @returns B less A; 0 where the least of the ranks do not move that way.
 */
export function commonShift(a: readonly number[], b: readonly number[]): number {
  const dark = Float64Array.from(a).sort();
  const moved = Float64Array.from(b)
    .sort()
    .map((x, rank) => x - dark[rank]);
  const sense = Math.sign(moved.reduce((sum, x) => sum + x, 0));
  const least = moved
    .map((x) => x * sense)
    .sort()
    .subarray(0, Math.max(1, Math.round(moved.length / 3)));
  const common = least.reduce((sum, x) => sum + x, 0) / least.length;
  return common > 0 ? sense * common : 0;
}
