/**
 * Change of a dimension over the whole range below fibre saturation f:
 * dD = D (Mf - Mi) / (100 f / S - f + Mi). Moisture above f moves nothing.
 * @param dimensionMm D at the initial moisture content, mm
 * @param shrinkagePercent S, green to ovendry, %
 * @param fromPercent Mi, %
 * @param toPercent Mf, %
 * @param fibreSaturationPercent f, % (default 30)
 * @returns mm, positive = swelling
 * @see FPL Wood Handbook Eq. (13-3), from memory, algebra confirmed against Table 13-5
 */
export function wideMovementMm(
  dimensionMm: number,
  shrinkagePercent: number,
  fromPercent: number,
  toPercent: number,
  fibreSaturationPercent = 30,
): number {
  const f = fibreSaturationPercent;
  const from = Math.min(fromPercent, f);
  const to = Math.min(toPercent, f);
  return (dimensionMm * (to - from)) / ((100 * f) / shrinkagePercent - f + from);
}
