import type { Cue, VisibilityWord } from './visibilityResult.js';

/** One board as it lies in the panel. */
export interface ArrangedBoard {
  /** The photo of the face that shows. */
  readonly photo: string;
  readonly face: 'A' | 'B';
  /** Rotated by 180 degrees in its own plane relative to that photo. */
  readonly turned: boolean;
  /** Number of the board, from 1, in the order given. */
  readonly board: number;
  /** As photographed, and its width once both edges are jointed. */
  readonly lengthMm: number;
  readonly widthMm: number;
  /** Lengthwise shift towards +x from lying with its middle on the panel's middle. */
  readonly slideMm: number;
  /** A mirrored copy standing for the mate that resawing would give. */
  readonly isImagined: boolean;
  /** Whether the heart side shows, and which way it planes as it lies; null unknown. */
  readonly showsHeart: boolean | null;
  readonly planesTowards: 'left' | 'right' | null;
}

/** The joint of two neighbours. */
export interface ArrangedJoint {
  readonly above: string;
  readonly below: string;
  readonly v: number | null;
  readonly cue: Cue | null;
  readonly word: VisibilityWord | null;
  /**
   * How far the figure runs on across the joint: 1 as inside a board, 0 as between strangers;
   * null where the boards are too narrow to tell or slid against each other.
   */
  readonly grown: number | null;
}

/** Something that the chosen order costs at the bench. */
export interface ArrangeConflict {
  readonly kind: 'tearOut' | 'heart';
  /** Numbers of the boards, from 1. */
  readonly boards: readonly number[];
  readonly text: string;
}

/** A resawn pair that was laid matched. */
export interface ArrangedMatch {
  readonly kind: 'book' | 'slip';
  readonly boards: readonly [number, number];
  /** How well the two figures agree, -1..1; null where it was not read. */
  readonly likeness: number | null;
}

/** The answer of `arrange`. */
export interface ArrangeResult {
  readonly schema: 'seamgrain/arrange@1';
  /** From the top of the panel down. */
  readonly order: readonly ArrangedBoard[];
  readonly joints: readonly ArrangedJoint[];
  /** Sum of V^3 over the joints. */
  readonly totalCost: number;
  /** Whether no other order within the constraints is better at what `laid` says. */
  readonly exact: boolean;
  /** What was looked for: least sum of V^3, or the order in which one face was cut up. */
  readonly laid: 'leastSeen' | 'asGrown' | 'byHand';
  /** Least sum of V^3 of any order within the constraints; null for an order laid by hand. */
  readonly leastCost: number | null;
  /** The panel that they make, glued and not yet trimmed. */
  readonly panel: { readonly lengthMm: number; readonly widthMm: number };
  readonly matched: readonly ArrangedMatch[];
  readonly conflicts: readonly ArrangeConflict[];
  readonly notes: readonly string[];
}
