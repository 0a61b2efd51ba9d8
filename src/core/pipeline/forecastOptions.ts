import type { EndPieces } from '../rip/frontCut.js';
import type { PanelBox } from '../rip/panelBox.js';
import type { WoodSetting } from '../wood/woodSetting.js';
import type { LeftOutRegion } from './scoreOptions.js';

/** Wood that is not there yet: what the same panel would be from other stock. */
export interface ImaginedWood {
  /** Rings against the face at the panel's middle, degrees, 0 flatsawn to 90 quartered. */
  readonly ringAngleDeg: number;
  /** Ring width in the tree, 0.4 to 6 mm. */
  readonly ringWidthMm: number;
  /** Strength of the ring lines, 1 as that wood usually has them. */
  readonly contrast: number;
  readonly setting: WoodSetting;
  readonly seed: number;
}

/** What `forecastPanel` is asked to do; see `defaultForecastOptions`. */
export interface ForecastOptions {
  /** Viewing distance, 100..20000 mm. */
  readonly distanceMm: number;
  readonly kerfMm: number;
  /** Dressed off each jointed edge, mm. */
  readonly dressMm: number;
  /** Rips to look at closely: middles of what is lost, mm from the top. */
  readonly ripsMm: readonly number[];
  /** Size of the front on the uncut panel, before trimming; null: no front. */
  readonly front: { readonly widthMm: number; readonly heightMm: number } | null;
  /** The front must lie within; null: anywhere. */
  readonly within: PanelBox | null;
  /** Wood left on every side of the front, mm; null: an inch, or half of what there is. */
  readonly marginMm: number | null;
  readonly ends: EndPieces;
  /** The panel may be turned by 180 degrees. */
  readonly eitherWayUp: boolean;
  /** How many places to report. */
  readonly places: number;
  /** Length to spare for slides, mm. */
  readonly spareMm: number;
  /** Trimmed off every edge of the front, mm; shown in the picture. */
  readonly revealMm: number;
  readonly ringAngleDeg: number | null;
  readonly ringWidthMm: number | null;
  readonly imagine: readonly ImaginedWood[];
  readonly leftOut: readonly LeftOutRegion[];
  /** False: what planing does is not asked; default true. */
  readonly withDepth?: boolean;
  /** True: every rip of the curve and every place is read as a score reads it, some four times slower. */
  readonly thorough?: boolean;
}

/**
 * 600 mm away, a full 1/8 in kerf, no dressing, ends that stay, an inch of length to spare (what
 * panels are usually cut oversize: common practice, no published source), 1/16 in of reveal.
 */
export const defaultForecastOptions: ForecastOptions = {
  distanceMm: 600,
  kerfMm: 3.175,
  dressMm: 0,
  ripsMm: [],
  front: null,
  within: null,
  marginMm: null,
  ends: 'stay',
  eitherWayUp: false,
  places: 5,
  spareMm: 25.4,
  revealMm: 1.5875,
  ringAngleDeg: null,
  ringWidthMm: null,
  imagine: [],
  leftOut: [],
};
