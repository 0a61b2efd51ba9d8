import type { Board } from './board.js';
import { driftOnLattice } from './driftOnLattice.js';
import { faceLattice } from './faceLattice.js';
import { wideFace } from './facePlane.js';
import { fibreFrame } from './fibreFrame.js';
import type { PaintJob } from './paintJob.js';
import { paintKnots } from './paintKnots.js';
import { paintPores } from './paintPores.js';
import { paintRays } from './paintRays.js';
import { paintWood } from './paintWood.js';
import type { PieceSpec } from './panelSpec.js';
import type { PieceCanvas } from './pieceCanvas.js';
import type { RingProfile } from './ringProfile.js';

/** Paints the wood that a piece shows inside a pixel box of the panel. */
export function paintPiece(
  board: Board,
  profile: RingProfile,
  piece: PieceSpec,
  box: { left: number; top: number; width: number; height: number },
  pxPerMm: number,
): PieceCanvas {
  const count = box.width * box.height;
  const canvas: PieceCanvas = {
    ...box,
    pxPerMm,
    tone: new Float32Array(count),
    pores: new Float32Array(count),
  };
  const { a, b, c, d, e, f } = piece.placement;
  const pxMm = 1 / pxPerMm;
  const faceFromPx = {
    a: a * pxMm,
    b: b * pxMm,
    c: c + (a * box.left + b * box.top) * pxMm,
    d: d * pxMm,
    e: e * pxMm,
    f: f + (d * box.left + e * box.top) * pxMm,
  };
  const corners = [0, box.width].flatMap((px) =>
    [0, box.height].map((py) => ({
      u: faceFromPx.a * px + faceFromPx.b * py + faceFromPx.c,
      v: faceFromPx.d * px + faceFromPx.e * py + faceFromPx.f,
    })),
  );
  const us = corners.map(({ u }) => u);
  const vs = corners.map(({ v }) => v);
  const plane = wideFace(board, piece.face ?? 'A', piece.depthMm ?? 0);
  const [u0, u1] = [Math.min(...us), Math.max(...us)];
  const [v0, v1] = [Math.min(...vs), Math.max(...vs)];
  const lattice = faceLattice(board, plane, u0 - 14, v0 - 8, u1 + 14, v1 + 8);
  const frame = fibreFrame(board, plane, lattice);
  const job: PaintJob = {
    board,
    plane,
    profile,
    lattice,
    drift: driftOnLattice(board, plane, lattice, frame.shift),
    frame,
    canvas,
    faceFromPx,
    // Fibre and pores change within tenths of a millimetre of depth.
    textureSeed: (board.spec.seed ^ 0x7e47) + 977 * Math.round(plane.originMm[2] / 0.4),
  };
  paintWood(job);
  if (board.texture > 0) {
    paintPores(job);
    paintRays(job);
  }
  paintKnots(job);
  return canvas;
}
