import type Fraction from 'fraction.js';
import type { LongEdge } from './exactLayout.js';

/** What a piece must measure after a step. */
export interface PromisedPiece {
  readonly name: string;
  readonly length: Fraction;
  readonly width: Fraction;
}

/** The edge or end of the blank that every setting is measured from. */
export type Reference = 'upper edge' | 'lower edge' | 'left end' | 'right end';

/** One pass over the saw. */
export interface SawStep {
  readonly kind: 'rip' | 'crosscut';
  readonly workpiece: string;
  /** Against the fence (rip) or the stop (crosscut). */
  readonly reference: Reference;
  /** From the fence or stop to the side of the blade that `toBlade` names, mm. */
  readonly fence: Fraction;
  readonly toBlade: 'near' | 'far';
  /** The piece between fence or stop and blade, and the piece beyond the blade. */
  readonly makes: readonly [reference: PromisedPiece, beyond: PromisedPiece];
  /** The piece whose size the setting protects; the kerf falls on the other one. */
  readonly keeps: string;
}

/** Dressing of sawn long edges, before any crosscut. */
export interface DressStep {
  readonly kind: 'dress';
  readonly workpiece: string;
  readonly edges: readonly LongEdge[];
  /** From each edge, mm. */
  readonly amount: Fraction;
  readonly makes: readonly [PromisedPiece];
}

/** What is done to the wood, in order. */
export type WorkStep = SawStep | DressStep;
