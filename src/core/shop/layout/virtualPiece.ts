import type { Span } from './divideAxis.js';

/** How an edge came about; only outside edges are references, only sawn ones are dressed. */
export type EdgeOrigin = 'outside' | 'sawn' | 'dressed';

/** The four sides of a piece as it lay in the panel. */
export type Side = 'upper' | 'lower' | 'left' | 'right';

/** A piece on the virtual bench, at the place where it lay in the blank. */
export interface VirtualPiece {
  readonly name: string;
  readonly x: Span;
  readonly y: Span;
  readonly edges: Readonly<Record<Side, EdgeOrigin>>;
}
