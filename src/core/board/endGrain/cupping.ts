/** How a board cups as it dries. */
export interface Cupping {
  /** Face that goes hollow as the board dries; null where neither does to speak of. */
  readonly hollow: 'top' | 'bottom' | null;
  /**
   * How much more tangential one face is than the other, 0 to 1: |mean cos^2 of the ring angle on
   * the top face - on the bottom face|. 0 stays flat.
   */
  readonly faceDifference: number;
  /** Hollow across the whole width for 4 % less moisture, mm; null without a species. */
  readonly hollowMm: number | null;
}

/** Less than this between the faces is not to be seen: 0.1 mm on a board of 150 x 22 mm, drying 4 %. */
const leastDifference = 0.02;
const dryingPercent = 4;

/**
 * Cupping tendency from the ring angle over both faces.
 *
 * A face shrinks across the width by C_T cos^2 a + C_R sin^2 a per 1 % moisture (a = ring angle to
 * the face; trade.md 1.7). The face that shrinks more goes hollow: away from the heart. A free
 * board of thickness t bends by the difference over t, and its hollow over the width W is
 * difference W^2 / (8 t). Moisture is taken to be even through the thickness, as it is after
 * weeks in the shop; a board that dries from one face only cups by that instead.
 *
 * @param topDeg, bottomDeg ring angles across the width, on each face.
 * @param coefficients of the species per 1 %, or null.
 */
export function cupping(
  topDeg: readonly number[],
  bottomDeg: readonly number[],
  size: { readonly widthMm: number; readonly thicknessMm: number },
  coefficients: { readonly radial: number; readonly tangential: number } | null,
): Cupping {
  const difference = meanCos2(topDeg) - meanCos2(bottomDeg);
  const hollow =
    difference > leastDifference ? 'top' : difference < -leastDifference ? 'bottom' : null;
  const strain = coefficients
    ? Math.abs(difference) * (coefficients.tangential - coefficients.radial) * dryingPercent
    : null;
  return {
    hollow,
    faceDifference: Math.abs(difference),
    hollowMm: strain === null ? null : (strain * size.widthMm ** 2) / (8 * size.thicknessMm),
  };
}

const meanCos2 = (angles: readonly number[]) =>
  angles.reduce((sum, deg) => sum + Math.cos((deg * Math.PI) / 180) ** 2, 0) /
  Math.max(1, angles.length);
