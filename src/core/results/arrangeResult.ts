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
  /** Whether no other order within the constraints is better. */
  readonly exact: boolean;
  /** The panel that they make, glued and not yet trimmed. */
  readonly panel: { readonly lengthMm: number; readonly widthMm: number };
  readonly matched: readonly ArrangedMatch[];
  readonly conflicts: readonly ArrangeConflict[];
  readonly notes: readonly string[];
}
