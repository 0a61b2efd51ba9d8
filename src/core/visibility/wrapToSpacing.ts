/**
 * An offset as the eye sees it on evenly spaced lines: to the nearest line.
 *
 * @param offsetMm offset across the grain, mm.
 * @param spacingMm distance between lines, mm, above 0.
 * @returns offset in [-spacingMm / 2, spacingMm / 2].
 */
export function wrapToSpacing(offsetMm: number, spacingMm: number): number {
  return offsetMm - spacingMm * Math.round(offsetMm / spacingMm);
}
