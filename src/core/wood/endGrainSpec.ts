import type { BoardSpec } from './boardSpec.js';

/** The end of an imagined board, as a saw left it. */
export interface EndGrainSpec {
  readonly board: BoardSpec;
  /** Where along the board it is cut, default 0 mm. */
  readonly atMm?: number;
  /** Strength of saw marks, default 0 (a planed end); 1 is a rough crosscut. */
  readonly sawMarks?: number;
  /** Strength of dirt and weather stain, default 0; 1 is a board left in the yard. */
  readonly stain?: number;
  /** Number of drying cracks, default 0. */
  readonly cracks?: number;
}
