import type Fraction from 'fraction.js';
import type { KerfBand, Span } from './divideAxis.js';
import type { FaceSizeMm, FrontWood } from './layoutInput.js';

/** What a piece is for. A cut-out is the wood that a front of other wood replaces. */
export type PieceKind = 'rail' | 'strip' | 'end' | 'divider' | 'front' | 'cut-out';

/** An edge of a piece, as it lies in the panel. */
export type LongEdge = 'upper' | 'lower';

/** One piece as it leaves the saw, where it lay in the panel. */
export interface ExactPiece {
  readonly name: string;
  readonly kind: PieceKind;
  readonly x: Span;
  readonly y: Span;
  /** Long edges that the saw made and the plane dresses. */
  readonly dressedEdges: readonly LongEdge[];
}

/** A strip that the rips free and the crosscuts part. */
export interface ExactStrip extends ExactPiece {
  readonly pieces: readonly ExactPiece[];
  readonly crosscuts: readonly KerfBand[];
}

/** The whole layout in rational millimetres. */
export interface ExactLayout {
  readonly length: Fraction;
  readonly width: Fraction;
  readonly kerf: Fraction;
  readonly dress: Fraction;
  readonly trim: Fraction;
  readonly trimEnds: Fraction;
  readonly slideLeft: Fraction;
  readonly slideRight: Fraction;
  readonly frontWood: FrontWood;
  readonly face: FaceSizeMm | null;
  /** From top to bottom: rail, strip, rail, … ; neighbours may both be strips. */
  readonly courses: readonly (ExactPiece | ExactStrip)[];
  readonly strips: readonly ExactStrip[];
  readonly rips: readonly KerfBand[];
  /** Least blank: width across the grain, length along it. */
  readonly needs: { readonly width: Fraction; readonly length: Fraction };
}
