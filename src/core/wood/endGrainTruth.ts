/** What is exactly true of a drawn end: x across the width, y into the thickness, mm. */
export interface EndGrainTruth {
  readonly widthMm: number;
  readonly thicknessMm: number;
  /** The pith, inside or outside the picture. */
  readonly pith: { readonly xMm: number; readonly yMm: number };
  /** Ring-line direction in the picture from +x towards +y, rad, in (-pi/2, pi/2]. */
  ringLineRad(xMm: number, yMm: number): number;
  /**
   * Ring angle to the wide face at mid-thickness, unsigned: 0 flatsawn, 90 quartered, deg.
   * With `overMm` the mean direction (double angle) of a disc of that radius; default the point.
   */
  ringAngleDeg(xMm: number, overMm?: number): number;
  /** Width of the ring at a point, measured across it in the picture, mm. */
  ringWidthMm(xMm: number, yMm: number): number;
}
