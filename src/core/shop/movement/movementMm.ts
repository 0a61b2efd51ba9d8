/**
 * Change of a dimension inside 6 to 14 % moisture content: dD = D C (Mf - Mi).
 * @param dimensionMm D at the initial moisture content, mm
 * @param coefficient C, fraction per 1 % moisture content
 * @param fromPercent Mi, %
 * @param toPercent Mf, %
 * @returns mm, positive = swelling
 * @see FPL Wood Handbook Eq. (13-2)
 */
export function movementMm(
  dimensionMm: number,
  coefficient: number,
  fromPercent: number,
  toPercent: number,
): number {
  return dimensionMm * coefficient * (toPercent - fromPercent);
}
