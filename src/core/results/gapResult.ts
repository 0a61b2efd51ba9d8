/** Gap between front and opening in three states. */
export interface GapSeasons {
  /** As fitted, in the first climate. */
  readonly fittedMm: number;
  /** When the wood is driest and when it is dampest of all climates given. */
  readonly driestMm: number;
  readonly dampestMm: number;
}

/** One month of the table that the user filled. */
export interface GapMonth {
  readonly month: number;
  readonly mc: number;
  /** Front against its fitted size. */
  readonly changeMm: number;
  readonly gapMm: number;
}

/** The answer of `gap`. Moisture contents in %, changes positive = swelling. */
export interface GapResult {
  readonly schema: 'seamgrain/gap@1';
  readonly species: string;
  readonly mcFrom: number;
  readonly mcTo: number;
  /** Of the front across its width, per 1 % moisture content, fraction of the dimension. */
  readonly coefficient: number;
  /** The coefficient at the ends of the cut class; both equal for a known angle. */
  readonly coefficientRange: readonly [number, number];
  /** The front's change between the two moisture contents. */
  readonly changeMm: number;
  /** Standard uncertainty of `changeMm`. */
  readonly changeSeMm: number;
  /** What the opening does meanwhile: 0 in a frame, nearly the front's change in a solid panel. */
  readonly openingChangeMm: number;
  /** The gap when the wood is driest, if the front just fits when it is dampest. */
  readonly gapMm: number;
  /** The same with one standard uncertainty on top. */
  readonly gapAmpleMm: number;
  readonly seasons: GapSeasons;
  /** Where the fitted gap belongs. */
  readonly place: {
    readonly at: 'top' | 'bottom' | 'split';
    readonly topMm: number;
    readonly bottomMm: number;
    readonly why: string;
  };
  /** Along the grain; null without a front length. */
  readonly ends: { readonly lengthMm: number; readonly changeMm: number } | null;
  /** The gap as the eye has it: dark line, chamfers included, at the viewing distance. */
  readonly looks: {
    readonly driestLineMm: number;
    readonly dampestLineMm: number;
    readonly driestArcMinutes: number;
    readonly dampestArcMinutes: number;
    /** Whether it is seen, and what hides its change over the year. */
    readonly advice: string;
    /** The same with the line's width, in inches. */
    readonly words: string;
  };
  readonly months: readonly GapMonth[] | null;
  readonly equation: string;
  readonly source: string;
  readonly notes: readonly string[];
}
