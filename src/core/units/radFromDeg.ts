/** Radians from degrees. */
export function radFromDeg(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}
