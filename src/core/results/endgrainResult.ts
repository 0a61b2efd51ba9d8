import type { CutShares } from './compareResult.js';
import type { PanelResult } from './scoreResult.js';

/** The answer of `endgrain`. */
export interface EndgrainResult {
  readonly schema: 'seamgrain/endgrain@1';
  readonly panel: PanelResult;
  /** Centre of the rings, in or outside the photo; null where the rings do not tell. */
  readonly pith: { readonly xMm: number; readonly yMm: number; readonly seMm: number } | null;
  /** The pith lies at least this far from the middle of the end; null where `pith` is told. */
  readonly pithAtLeastMm: number | null;
  /** Whether the rings were found in the photo or marked by hand. */
  readonly found: 'photo' | 'placed';
  /** Ring line against the wide face at mid-thickness, unsigned: 0 flatsawn, 90 quartered. */
  readonly ringAngle: readonly {
    readonly xMm: number;
    readonly angleDeg: number;
    readonly seDeg: number;
    /** The same with its lean, in the photo from +x towards +y, in (-90, 90]. */
    readonly leanDeg: number;
  }[];
  readonly ringWidthMm: {
    readonly median: number | null;
    readonly p10: number | null;
    readonly p90: number | null;
  };
  readonly cut: CutShares | null;
  readonly cupping: CuppingResult | null;
  /** Whether saw marks were found and taken out before reading. */
  readonly sawMarks: boolean;
  readonly notes: readonly string[];
}

/** How the board cups as it dries (`hollowMm`: for 4 % less moisture, with a species). */
export interface CuppingResult {
  readonly hollow: 'top' | 'bottom' | null;
  readonly faceDifference: number;
  readonly hollowMm: number | null;
}
