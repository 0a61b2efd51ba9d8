/**
 * A cue after the board's own figure has had its say: lively wood hides a joint.
 *
 * V = x / sqrt(1 + (2 m)^2). A line at the board's own rms in all five cues pools to at most
 * 5^(1/3) / 2 = 0.855, below visible. The strength 2 is an assumption.
 *
 * @param x the cue at the joint, times over just visible.
 * @param ownRms rms m of the same cue at lines of the same board without a joint.
 */
export function maskCue(x: number, ownRms: number): number {
  return x / Math.sqrt(1 + (2 * ownRms) ** 2);
}
