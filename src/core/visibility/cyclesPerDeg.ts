/**
 * How fine lines look from where one stands: periods in one degree of the eye's view.
 *
 * f = pi D / (180 s); from 600 mm, lines 5 mm apart are 2.1 cycles a degree.
 *
 * @param spacingMm distance between lines, mm, above 0.
 * @param distanceMm viewing distance, mm, above 0.
 */
export function cyclesPerDeg(spacingMm: number, distanceMm: number): number {
  return (Math.PI * distanceMm) / (180 * spacingMm);
}
