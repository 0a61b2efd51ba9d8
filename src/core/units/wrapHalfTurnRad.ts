/**
 * Wraps a direction without sense (a grain line) into (-pi/2, pi/2].
 * @param angleRad any angle from +x towards +y, rad
 */
export function wrapHalfTurnRad(angleRad: number): number {
  const turns = Math.ceil(angleRad / Math.PI - 0.5);
  return angleRad - turns * Math.PI;
}
