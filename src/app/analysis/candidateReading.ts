import type { ComparedFront } from '../../core/results/compareResult.js';
import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import type { FaceRings } from '../../core/results/faceRings.js';
import type { RipCost } from '../../core/rip/ripCurve.js';

/** What is known of a candidate so far; null: still to be read. */
export interface CandidateReading {
  readonly curve: readonly RipCost[] | null;
  /** The best place for the front; null while no front is wanted. */
  readonly front: FrontReading | null;
  /** What is to be known of its photo; left out until it is read. */
  readonly notes?: readonly string[];
  /** The face's size across the grain. */
  readonly heightMm?: number | null;
  readonly rings?: CandidateRings | null;
}

/** The best place for the front on a candidate, or why it cannot be taken from it. */
export type FrontReading =
  | { readonly place: ComparedFront }
  | { readonly place: null; readonly why: string };

/** How a candidate's rings stand, as its end and its face tell. */
export interface CandidateRings {
  readonly end: EndgrainResult | null;
  /** Asked only where no end tells. */
  readonly face: FaceRings | null;
}
