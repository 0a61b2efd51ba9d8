import type { BoardEdge } from './boardEdges.js';

/** An edge and the number that the table knows it by. */
export interface NumberedEdge {
  readonly index: number;
  readonly board: number;
  readonly edge: BoardEdge;
}
