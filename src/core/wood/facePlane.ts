import type { Board } from './board.js';

/**
 * A plane through a board, as seen from outside: face point (u, v) mm lies at
 * origin + u * right + v * down in the board frame.
 */
export interface FacePlane {
  readonly originMm: readonly [number, number, number];
  readonly right: readonly [number, number, number];
  readonly down: readonly [number, number, number];
}

/** Which face: the two wide ones, or any plane given outright. */
export type FaceName = 'A' | 'B';

/**
 * The plane of a wide face, planed `depthMm` deeper than the board's own surface.
 *
 * Face A is z = depth with u = x, v = y. Face B is the other side of the thickness after the
 * board has been turned over about its length: u = x, v = width - y.
 */
export function wideFace(board: Board, face: FaceName, depthMm = 0): FacePlane {
  return face === 'A'
    ? { originMm: [0, 0, depthMm], right: [1, 0, 0], down: [0, 1, 0] }
    : {
        originMm: [0, board.widthMm, board.thicknessMm - depthMm],
        right: [1, 0, 0],
        down: [0, -1, 0],
      };
}
