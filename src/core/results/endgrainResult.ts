import type { CutShares } from './compareResult.js';
import type { PanelResult } from './scoreResult.js';

/** The answer of `endgrain`. */
export interface EndgrainResult {
  readonly schema: 'seamgrain/endgrain@1';
  readonly panel: PanelResult;
  /** Centre of the rings, in or outside the photo; null where the rings do not tell. */
  readonly pith: { readonly xMm: number; readonly yMm: number; readonly seMm: number } | null;
  /** Ring line against the wide face at mid-thickness, unsigned: 0 flatsawn, 90 quartered. */
  readonly ringAngle: readonly { readonly xMm: number; readonly angleDeg: number }[];
  readonly ringWidthMm: {
    readonly median: number | null;
    readonly p10: number | null;
    readonly p90: number | null;
  };
  readonly cut: CutShares | null;
  readonly notes: readonly string[];
}
