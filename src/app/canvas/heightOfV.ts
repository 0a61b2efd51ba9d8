/** Where the plots are ruled: the four borders between the five words. */
export const ruledLevels = [0.5, 1, 2, 4] as const;

const tallest = 8;

/**
 * Height of V on a plot: doublings are equal steps, as the words are, with 0 at the foot.
 * V = 8 and above touch the top.
 */
export function heightOfV(v: number, height: number): number {
  const share = Math.log2(1 + Math.max(0, v) * 3) / Math.log2(1 + tallest * 3);
  return Math.min(1, share) * (height - 6);
}
