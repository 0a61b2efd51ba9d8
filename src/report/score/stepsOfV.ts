/**
 * Height of V in steps of the scale, 0..5: one step per doubling, from 1/4 to 8.
 * What is untold reaches the line of 'just visible', 2 steps.
 */
export function stepsOfV(v: number | null): number {
  if (v === null) return 2;
  return Math.min(5, Math.max(0.25, Math.log2(Math.max(v, 1e-3)) + 2));
}
