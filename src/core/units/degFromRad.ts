/** Degrees from radians. */
export function degFromRad(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}
