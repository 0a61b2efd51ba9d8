import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { ForecastOptions } from '../../core/pipeline/forecastOptions.js';
import type { LeftOutRegion } from '../../core/pipeline/scoreOptions.js';
import type { ForecastPlacement } from '../../core/results/forecastResult.js';
import type { Cue } from '../../core/results/visibilityResult.js';
import type { CutLoss, EndPieces, FrontPlace } from '../../core/rip/frontCut.js';
import type { FrontSegment } from '../../core/rip/frontSegments.js';
import type { RipCost } from '../../core/rip/ripCurve.js';

/** The panel that fronts are tried on, read once. */
export interface FrontPanel {
  readonly photo: PanelPhoto;
  readonly distanceMm: number;
  readonly leftOut: readonly LeftOutRegion[];
}

/** One place of the front to be judged. */
export interface FrontQuestion {
  readonly place: FrontPlace;
  readonly loss: CutLoss;
  readonly ends: EndPieces;
  /** While dragging: judged on the nearest lines of the rip curve, which are read already. */
  readonly rough: boolean;
}

/** A joint or side of the reveal with its visibility. */
export interface JudgedSegment extends FrontSegment {
  readonly v: number | null;
  readonly cue: Cue | null;
}

/** What a place of the front would cost. */
export interface FrontAnswer {
  readonly question: FrontQuestion;
  readonly segments: readonly JudgedSegment[];
  /** Sum of V^3 over the joints and reveals. */
  readonly cost: number;
}

/** Page to worker. */
export type FrontRequest =
  | { readonly kind: 'panel'; readonly panel: FrontPanel }
  | { readonly kind: 'curve'; readonly loss: CutLoss }
  | { readonly kind: 'front'; readonly question: FrontQuestion }
  | { readonly kind: 'places'; readonly options: ForecastOptions };

/** Worker to page. */
export type FrontReply =
  /** The panel is read; what is to be known of it. */
  | { readonly kind: 'ready'; readonly notes: readonly string[] }
  | { readonly kind: 'curve'; readonly loss: CutLoss; readonly curve: readonly RipCost[] }
  | { readonly kind: 'front'; readonly answer: FrontAnswer }
  | { readonly kind: 'places'; readonly places: readonly ForecastPlacement[] }
  | { readonly kind: 'progress'; readonly fraction: number; readonly what: string }
  | { readonly kind: 'failed'; readonly of: FrontRequest['kind']; readonly message: string };
