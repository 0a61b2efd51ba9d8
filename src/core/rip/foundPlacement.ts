import type { ForecastCutPart } from '../results/forecastResult.js';
import type { PlacementCost } from './placementCost.js';

/** A place of the search; `turned`: with the panel's lower edge up. */
export interface FoundPlacement extends PlacementCost {
  readonly turned: boolean;
  /** What of the front and its cuts lies on an area that was left out. */
  readonly leftOut: readonly ForecastCutPart[];
}
