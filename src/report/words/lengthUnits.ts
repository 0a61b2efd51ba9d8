/** How lengths are written for this maker. */
export interface LengthUnits {
  readonly units: 'in' | 'mm';
  /** Marks per inch for places along the panel, default 16. */
  readonly denominator?: number;
}
