import type { ResolvedBoard } from './resolvedBoard.js';

type Vector = readonly [number, number, number];

/** The stem's axes written in the board frame, and the point where the pith meets mid-length. */
export interface StemAxes {
  readonly originMm: Vector;
  readonly along: Vector;
  readonly acrossX: Vector;
  readonly acrossY: Vector;
}

function unit(v: Vector): Vector {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
}

/**
 * Rigid placement of the board in the stem.
 *
 * `along` is the stem axis (1, tan slopeInFace, tan slopeInDepth) made unit; the two cross axes
 * are turned about it by the board's angle around the stem.
 */
export function stemAxes(board: ResolvedBoard): StemAxes {
  const along = unit([1, Math.tan(board.slopeInFaceRad), Math.tan(board.slopeInDepthRad)]);
  const lean = along[1];
  const width = unit([-lean * along[0], 1 - lean * along[1], -lean * along[2]]);
  const depth: Vector = [
    along[1] * width[2] - along[2] * width[1],
    along[2] * width[0] - along[0] * width[2],
    along[0] * width[1] - along[1] * width[0],
  ];
  const cos = Math.cos(board.aroundStemRad);
  const sin = Math.sin(board.aroundStemRad);
  const turn = (a: number, b: number): Vector => [
    a * width[0] + b * depth[0],
    a * width[1] + b * depth[1],
    a * width[2] + b * depth[2],
  ];
  return {
    originMm: [board.lengthMm / 2, board.pithYMm, board.pithDepthMm],
    along,
    acrossX: turn(cos, -sin),
    acrossY: turn(sin, cos),
  };
}
