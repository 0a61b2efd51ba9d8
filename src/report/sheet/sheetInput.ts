import type { GapResult } from '../../core/results/gapResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import type { JpegPicture } from './mark.js';
import type { Paper } from './paperSizes.js';

/** What goes on the sheet. */
export interface SheetInput {
  readonly layout: LayoutResult;
  readonly gap?: GapResult | null;
  /** The panel's photograph, square on. */
  readonly picture?: JpegPicture | null;
  /** Written at the top, such as the name of the job. */
  readonly title?: string;
  readonly paper: Paper;
}
