/**
 * Dimensional change coefficient from total shrinkage: C = S / (100 f - (f - 10) S).
 * It is Eq. (13-3) started at 10 % moisture content; with f = 30 it reproduces Table 13-5.
 * @param shrinkagePercent S, green to ovendry, %
 * @param fibreSaturationPercent f, 30 (default) or 22 for some cedars, redwood, mahogany, teak
 * @returns change per 1 % moisture content, fraction of the dimension
 * @see FPL Wood Handbook ch. 13; algebra checked against 24 of 27 rows of Table 13-5
 */
export function coefficientFromShrinkage(
  shrinkagePercent: number,
  fibreSaturationPercent = 30,
): number {
  const f = fibreSaturationPercent;
  return shrinkagePercent / (100 * f - (f - 10) * shrinkagePercent);
}
