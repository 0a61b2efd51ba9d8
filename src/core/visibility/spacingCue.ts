/**
 * How visible the change of line spacing at the joint is, in times over just visible.
 *
 * x = |ln(sB / sA)| / 0.05: five per cent is just seen.
 *
 * @param spacingAMm spacing on side A, mm, above 0.
 * @param spacingBMm spacing on side B, mm, above 0.
 * @returns 0 or more, before masking.
 */
export function spacingCue(spacingAMm: number, spacingBMm: number): number {
  return Math.abs(Math.log(spacingBMm / spacingAMm)) / 0.05;
}
