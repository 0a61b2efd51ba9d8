/** What the joints are read with; see `defaultArrangeOptions`. */
export interface ArrangeOptions {
  /** Viewing distance, 100..20000 mm. */
  readonly distanceMm: number;
  /** What jointing takes from each long edge, mm. */
  readonly jointMm: number;
  /** The saw cut that parted the boards, if they were one before the photos, mm. */
  readonly kerfMm: number;
  /** Length beyond the panel's that every board has to spare for sliding, mm. */
  readonly spareMm: number;
  /** Count colour steps; off when the photos were not taken in one light. */
  readonly useColour: boolean;
}

/** 600 mm away, edges as photographed, no saw cut, no sliding, colour counted. */
export const defaultArrangeOptions: ArrangeOptions = {
  distanceMm: 600,
  jointMm: 0,
  kerfMm: 0,
  spareMm: 0,
  useColour: true,
};
