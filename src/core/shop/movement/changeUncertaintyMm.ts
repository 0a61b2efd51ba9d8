/** One standard uncertainty of each thing that a forecast of movement rests on. */
export const movementUncertainty = {
  /** Of a moisture content, from air or from a meter, % (FPL-GTR-229: sorption data to about 1 %). */
  moisturePercent: 1,
  /** Of one board's coefficient against its species' mean, relative [M, Wood Handbook ch. 4]. */
  coefficientRelative: 0.15,
  /** Of the straight-line formula, relative (Wood Handbook p. 13-15). */
  formulaRelative: 0.05,
} as const;

/**
 * Standard uncertainty of a change in width:
 * sqrt( (D C)^2 2 sigma_M^2 + change^2 (0.15^2 + 0.05^2 + rings^2) ).
 * @param acrossMm D, mm
 * @param coefficient C, per 1 %
 * @param changeMm the change itself, mm
 * @param ringsRelative relative uncertainty of C from the ring angle; 0 for a measured angle
 */
export function changeUncertaintyMm(
  acrossMm: number,
  coefficient: number,
  changeMm: number,
  ringsRelative: number,
): number {
  const { moisturePercent, coefficientRelative, formulaRelative } = movementUncertainty;
  const moistureMm = acrossMm * coefficient * moisturePercent * Math.SQRT2;
  const relative = Math.hypot(coefficientRelative, formulaRelative, ringsRelative);
  return Math.hypot(moistureMm, changeMm * relative);
}
