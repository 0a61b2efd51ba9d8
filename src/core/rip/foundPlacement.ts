import type { ForecastCutPart } from '../results/forecastResult.js';
import type { PlacementCost } from './placementCost.js';

/** A place of the search; `turned`: with the panel's lower edge up. */
export interface FoundPlacement extends PlacementCost {
  readonly turned: boolean;
  /** What of the front and its cuts lies on an area that was left out. */
  readonly leftOut: readonly ForecastCutPart[];
}

/** A place as the search keeps it while it tries all: its joints and reveals one by one are let go. */
export type TriedPlacement = Omit<FoundPlacement, 'segments'>;

/** How much of a place is not judged: 0 nothing, 1 wood in the front's face, 2 a cut. */
export function unjudged({ leftOut }: Pick<FoundPlacement, 'leftOut'>): 0 | 1 | 2 {
  if (leftOut.length === 0) return 0;
  return leftOut.every((part) => part === 'front') ? 1 : 2;
}
