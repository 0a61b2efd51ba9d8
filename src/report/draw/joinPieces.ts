import type { Piece } from './piece.js';

/** Several pieces drawn one over the other, the last on top. */
export function joinPieces(pieces: readonly Piece[]): Piece {
  return {
    svg: pieces.map((piece) => piece.svg).join(''),
    labels: pieces.flatMap((piece) => piece.labels),
  };
}
