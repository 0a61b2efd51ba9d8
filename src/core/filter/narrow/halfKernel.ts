/**
 * Right half of an odd kernel from its middle, filled up with zeros to seven values.
 *
 * @param kernel up to 13 weights, symmetric or antisymmetric.
 */
export function halfKernel(kernel: Float64Array): Float64Array {
  const half = new Float64Array(7);
  half.set(kernel.subarray((kernel.length - 1) / 2));
  return half;
}
