/** Direction halfway between two directions without sense (mean of the double angles), rad. */
export function middleDirectionRad(a: number, b: number): number {
  const sin = Math.sin(2 * a) + Math.sin(2 * b);
  const cos = Math.cos(2 * a) + Math.cos(2 * b);
  return 0.5 * Math.atan2(sin, cos);
}
