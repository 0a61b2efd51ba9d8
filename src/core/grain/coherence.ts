/**
 * How much one direction rules: 1 for straight lines, 0 where nothing or everything points.
 *
 * (l1 - l2) / (l1 + l2) of the tensor's eigenvalues; 0 for a flat picture.
 */
export function coherence(jxx: number, jxy: number, jyy: number): number {
  const trace = jxx + jyy;
  return trace > 0 ? Math.min(1, Math.sqrt((jxx - jyy) ** 2 + 4 * jxy ** 2) / trace) : 0;
}
