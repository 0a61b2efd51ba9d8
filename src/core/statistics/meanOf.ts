/** Mean of the values of a plane or profile. */
export function meanOf(values: Float32Array | Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum / values.length;
}
