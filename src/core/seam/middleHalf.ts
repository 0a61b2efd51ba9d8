/**
 * Half of the stretch in which the middle 68 % of a distribution lie, in the unit of `values`: its
 * standard deviation where it is normal, and blind to far tails.
 *
 * @param values even steps, growing. @param weights what lies in the step about each, not all 0.
 */
export function middleHalf(values: readonly number[], weights: Float64Array): number {
  const total = weights.reduce((sum, w) => sum + w, 0);
  const step = values[1] - values[0];
  const below = (share: number) => {
    let [i, sum] = [0, 0];
    while (i < weights.length - 1 && sum + weights[i] < share * total) sum += weights[i++];
    return values[i] + step * ((share * total - sum) / weights[i] - 0.5);
  };
  return (below(0.84) - below(0.16)) / 2;
}
