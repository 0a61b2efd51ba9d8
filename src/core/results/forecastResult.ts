import type { LineMm, PanelResult, SeamResult, SeamWindow } from './scoreResult.js';
import type { Cue, VisibilityResult, VisibilityWord } from './visibilityResult.js';

/** Cost of one rip centred at yMm, over the whole length of the panel. */
export interface ForecastCurvePoint {
  /** Middle of what is lost, mm from the top. */
  readonly yMm: number;
  /** By picture: the strip taken out of the photo, re-joined and scored. */
  readonly v: number | null;
  /** By the closed form from local angle, spacing and contrast. */
  readonly vByAngle: number | null;
  readonly cue: Cue | null;
  /** The rip runs through an area that was left out; what it shows there is not in `v`. */
  readonly leftOut?: true;
}

/** One stretch of a forecast rip. */
export interface ForecastWindow extends SeamWindow {
  readonly vByAngle: number | null;
}

/** A rip that was asked for. */
export interface ForecastRip {
  readonly yMm: number;
  readonly visibility: VisibilityResult;
  readonly vByAngle: number | null;
  /** Slide of the upper piece in +x that costs least within the spare length; 0 when none gains. */
  readonly bestSlideMm: number | null;
  readonly vAtBestSlide: number | null;
  /** What the window equations alone propose, best first. */
  readonly slidesByAngleMm: readonly number[];
  readonly windows: readonly ForecastWindow[];
  readonly notes: readonly string[];
}

/** A stretch of the width where picture and angle disagree by more than a factor of two. */
export interface ForecastDisagreement {
  readonly fromYMm: number;
  readonly toYMm: number;
  /** Means over the stretch. */
  readonly v: number;
  readonly vByAngle: number;
  /** What makes the picture differ. */
  readonly cue: Cue | null;
  readonly why: string;
}

export type ForecastPiece = 'left end' | 'right end' | 'front';
export type ForecastEdge = 'upper' | 'lower' | 'left' | 'right';

/** One joint or side of the reveal about a front. */
export interface ForecastSegment {
  readonly piece: ForecastPiece;
  readonly edge: ForecastEdge;
  /** Glued, or a side of the reveal. */
  readonly glued: boolean;
  /** Middle of what the cut takes there, on the uncut panel. */
  readonly line: LineMm;
  readonly v: number | null;
  readonly cue: Cue | null;
  readonly word: VisibilityWord | null;
  /** The same with the pieces slid as `slides` says. */
  readonly vAtSlides: number | null;
}

/** The worst joint or reveal of a placement. */
export interface ForecastWorst {
  readonly piece: ForecastPiece;
  readonly edge: ForecastEdge;
  readonly v: number | null;
}

/** The front's face, or a cut about it. */
export type ForecastCutPart =
  | 'front'
  | 'upper rip'
  | 'lower rip'
  | 'left crosscut'
  | 'right crosscut';

/** A place to take the front from. */
export interface ForecastPlacement {
  readonly rank: number;
  /** The front's upper left corner on the uncut panel as photographed. */
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** (sum of V^3 over all joints and reveals)^(1/3), pieces at their stations. */
  readonly v: number;
  /** Sum of V^3. */
  readonly cost: number;
  readonly worst: ForecastWorst;
  /** Best slide of each piece from its station, +x; the front stays. */
  readonly slides: {
    readonly left: number;
    readonly right: number;
    readonly upper: number;
    readonly lower: number;
  };
  readonly vAtSlides: number;
  /** Panel length that the slides cost, mm. */
  readonly slidesCostMm: number;
  readonly segments: readonly ForecastSegment[];
  /** With the panel's lower edge up. */
  readonly turned: boolean;
  /** The same place with the end pieces treated the other way. */
  readonly otherEnds: {
    readonly ends: 'stay' | 'close';
    readonly v: number;
    readonly worst: ForecastWorst;
  };
  /** What lies on an area that was left out (a knot, glare) and is not judged there; see notes. */
  readonly leftOut: readonly ForecastCutPart[];
  readonly notes: readonly string[];
}

/** How far grain lines part when front and panel are planed by different amounts. */
export interface ForecastDepth {
  /** The line this was worked out for: the front's rails, or a rip, mm from the top. */
  readonly atYMm: readonly number[];
  /** Told by the face: where the rings lie flattest along these lines. */
  readonly ringAngleDeg: number | null;
  /** Standard error where the angle is estimated from the face; null where it is given. */
  readonly ringAngleSeDeg: number | null;
  readonly ringAngleFrom: 'given' | 'ring width and line spacing' | 'wood model' | 'face' | null;
  /** Shift of a line across the grain for each millimetre planed off, mm. */
  readonly shiftPerMm: number | null;
  /** Largest difference that still disappears; null: untold, or none matters (see notes). */
  readonly largestMm: number | null;
  /**
   * The same a standard error flatter and steeper, where the angle is estimated; null in it: none
   * matters.
   */
  readonly largestRangeMm: readonly [least: number | null, most: number | null] | null;
  readonly notes: readonly string[];
}

/** How the rips of one face stand as a whole. */
export interface ForecastSummary {
  readonly vMedian: number | null;
  readonly vBest: number | null;
  readonly bestYMm: number | null;
  /** Share of the width where a rip disappears (V < 0.5). */
  readonly disappears: number | null;
}

/** The same panel as it would be from other wood. */
export interface ForecastImagined {
  readonly ringAngleDeg: number;
  readonly cut: 'flatsawn' | 'rift' | 'quartered';
  readonly ringWidthMm: number;
  readonly contrast: number;
  readonly summary: ForecastSummary;
  readonly curve: readonly ForecastCurvePoint[];
  readonly depth: ForecastDepth;
}

/** The answer of `forecast`. */
export interface ForecastResult {
  readonly schema: 'seamgrain/forecast@1';
  readonly panel: PanelResult;
  readonly kerfMm: number;
  readonly dressMm: number;
  /** Kerf and both dressed edges: what one rip takes. */
  readonly lossMm: number;
  readonly distanceMm: number;
  /** Longest slide that was allowed, mm. */
  readonly spareMm: number;
  /** Trimmed off every edge of the front, mm. */
  readonly revealMm: number;
  readonly curve: readonly ForecastCurvePoint[];
  readonly summary: ForecastSummary;
  readonly disagreements: readonly ForecastDisagreement[];
  readonly rips: readonly ForecastRip[];
  readonly placements: readonly ForecastPlacement[];
  /** What the placement search went through; null when no front was asked for. */
  readonly search: {
    readonly tried: number;
    readonly vMedian: number;
    readonly ends: 'stay' | 'close';
    /** How many of them keep front and cuts clear of every area that was left out. */
    readonly clear: number;
  } | null;
  /** The panel glued up again, by the best placement, else with the asked rips, else the best rip. */
  readonly reglued: {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly seams: readonly SeamResult[];
  } | null;
  readonly depth: ForecastDepth | null;
  readonly imagined: readonly ForecastImagined[];
  /** Areas that were left out: corners in panel millimetres. */
  readonly leftOut: readonly (readonly (readonly [xMm: number, yMm: number])[])[];
  readonly notes: readonly string[];
}
