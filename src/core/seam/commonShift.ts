/** A step between boards keeps up: read over so many stretches either way, a decimetre at 600 mm. */
export const alongStretches = 10;

/**
 * The step that all the wood on two sides of a line has in common, light and dark alike.
 *
 * Both sides' stretches are put in order from dark to light and compared rank by rank. Another
 * board is lighter or darker in every rank; more latewood on one side moves the middle ranks only.
 * What is told is the mean over the third of the ranks that moved least, in the sense of them all.
 *
 * @param a, b one number for every stretch, as many on either side; a few dozen at most.
 * @returns B less A; 0 where the least of the ranks do not move that way.
 */
export function commonShift(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const [dark, moved] = [inOrder(a), inOrder(b)];
  let sum = 0;
  for (let rank = 0; rank < moved.length; rank++) {
    moved[rank] -= dark[rank];
    sum += moved[rank];
  }
  const sense = Math.sign(sum);
  for (let rank = 0; rank < moved.length; rank++) moved[rank] *= sense;
  sort(moved);
  const third = Math.max(1, Math.round(moved.length / 3));
  let least = 0;
  for (let rank = 0; rank < third; rank++) least += moved[rank];
  return least > 0 ? (sense * least) / third : 0;
}

function inOrder(values: ArrayLike<number>): Float64Array {
  const sorted = Float64Array.from(values);
  sort(sorted);
  return sorted;
}

/** By insertion: for a few dozen numbers several times as fast as the built-in sort. */
function sort(values: Float64Array): void {
  for (let i = 1; i < values.length; i++) {
    const value = values[i];
    let k = i;
    while (k > 0 && values[k - 1] > value) {
      values[k] = values[k - 1];
      k--;
    }
    values[k] = value;
  }
}
