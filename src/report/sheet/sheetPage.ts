import type { Mark } from './mark.js';
import type { Paper } from './paperSizes.js';

/** One page ready to print. */
export interface SheetPage {
  readonly paper: Paper;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly marks: readonly Mark[];
}
