import type { GrainResult } from '../../core/results/grainResult.js';
import type { LengthUnits } from '../words/lengthUnits.js';

/** How a score is drawn. */
export interface ScoreDrawing extends LengthUnits {
  /** The rectified panel: a data URL, or a file's name beside the SVG. Without it: plain grey. */
  readonly photoHref?: string;
  /** Instead of `photoHref`: the id of an `<image>` of 1 x 1 already in the page. */
  readonly photoId?: string;
  /** Width of the picture, px, 320..2400, default 1160. Type keeps its size, so ask for 360 on a phone. */
  readonly widthPx?: number;
  /** Default `bright`. */
  readonly theme?: 'bright' | 'dark';
  /** Grain strokes are drawn when given. */
  readonly grain?: GrainResult;
  /** The answer as a sentence above the panel, default true. */
  readonly headline?: boolean;
  /** Viewing distance that the score was made for, mm; named in the legend. */
  readonly distanceMm?: number;
  /** Keeps ids apart when several pictures stand in one page, default `score`. */
  readonly idPrefix?: string;
}
