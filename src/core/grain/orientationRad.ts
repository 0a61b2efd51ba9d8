/**
 * Grain direction of one structure tensor: the direction in which the picture changes least.
 *
 * theta = atan2(-2 Jxy, Jyy - Jxx) / 2.
 *
 * @returns radians in (-pi/2, pi/2], 0 along +x, turning towards +y (down); 0 for a tensor
 *   without any direction, where `coherence` is 0 as well.
 */
export function orientationRad(jxx: number, jxy: number, jyy: number): number {
  const angle = 0.5 * Math.atan2(-2 * jxy, jyy - jxx);
  return angle > -Math.PI / 2 ? angle + 0 : Math.PI / 2;
}
