/**
 * Wraps a direction without sense (a grain line) into (-90, 90].
 * @param angleDeg any angle from +x towards +y, degrees
 */
export function wrapHalfTurnDeg(angleDeg: number): number {
  const turns = Math.ceil(angleDeg / 180 - 0.5);
  return angleDeg - turns * 180;
}
