/**
 * How far a grain line moves on the face when t more is planed off: t / tan(ring angle).
 * This is why a front planed apart from its panel no longer meets it.
 * @param planedMm difference in planing between front and panel, mm
 * @param ringAngleDeg ring to wide face, 0 flatsawn to 90 quartered
 * @returns mm across the grain; null at 0, where a line may move without bound
 */
export function depthLineShiftMm(planedMm: number, ringAngleDeg: number): number | null {
  if (ringAngleDeg <= 0) return null;
  return ringAngleDeg >= 90 ? 0 : planedMm / Math.tan((ringAngleDeg * Math.PI) / 180);
}
