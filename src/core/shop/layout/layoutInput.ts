import type { RuleStep } from '../../results/layoutResult.js';
import type { SawLimits } from './sawLimits.js';

/** A board or panel seen on its face: length along the grain (x), width across it (y). */
export interface FaceSizeMm {
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** A finished front and the place of its upper left corner on the uncut panel. */
export interface FrontPlace extends FaceSizeMm {
  readonly xMm: number;
  readonly yMm: number;
}

/** What the front is made of: the panel's own wood, another wood, or veneer on a stable core. */
export type FrontWood = 'same' | 'contrasting' | 'veneered';

/** What the maker gives to `computeLayout`; lengths in mm, x along the grain, y across it. */
export interface LayoutInput {
  /** The blank in hand, its reference edge jointed and its reference end squared. */
  readonly panel: FaceSizeMm;
  /** Fronts; those of one height at one y share a strip. They are numbered in reading order. */
  readonly fronts: readonly FrontPlace[];
  /** Width of the saw cut, measured on a test cut. Default 3.175 (1/8 in). */
  readonly kerfMm?: number;
  /** Taken from each jointed edge after ripping. Default 0. */
  readonly dressMm?: number;
  /** Taken from each long edge of the front when it is fitted. Default 0. */
  readonly trimMm?: number;
  /** Taken from each end of the front when it is fitted. Default: as `trimMm`. */
  readonly trimEndsMm?: number;
  /** How far the end pieces are slid towards the front at glue-up, 0 (default) to one kerf. */
  readonly endSlideMm?: { readonly leftMm: number; readonly rightMm: number };
  /** The face wanted after glue-up and squaring. Default: all that comes out. */
  readonly face?: FaceSizeMm;
  /** The jointed edge that runs on the fence. Default: the upper one unless its rail is narrow. */
  readonly referenceEdge?: 'upper edge' | 'lower edge';
  /** The squared end that meets the stop. Default: left. */
  readonly referenceEnd?: 'left end' | 'right end';
  /** The rule or scale on the fence. Default 1/32 in. */
  readonly rule?: RuleStep;
  readonly sawLimits?: Partial<SawLimits>;
  /** Thickness of blank and finished work. */
  readonly thickness?: { readonly roughMm: number; readonly finishedMm: number };
  /** Default `"same"`. */
  readonly frontWood?: FrontWood;
}
