import type { Board } from './board.js';
import type { FacePlane } from './facePlane.js';
import type { AgeSample } from './ringField.js';

/**
 * Age radius and its slope length on a square lattice over part of a face.
 * Node (i, j) lies at face point ((i0 + i) step, (j0 + j) step), so that lattices of one face
 * agree wherever they overlap.
 */
export interface FaceLattice {
  readonly stepMm: number;
  readonly i0: number;
  readonly j0: number;
  readonly columns: number;
  readonly rows: number;
  readonly ageMm: Float64Array;
  readonly slope: Float32Array;
}

/** Samples the ring field over u0..u1, v0..v1 mm with a margin of two nodes. */
export function faceLattice(
  board: Board,
  plane: FacePlane,
  u0: number,
  v0: number,
  u1: number,
  v1: number,
  stepMm = 1,
): FaceLattice {
  const i0 = Math.floor(u0 / stepMm) - 2;
  const j0 = Math.floor(v0 / stepMm) - 2;
  const columns = Math.ceil(u1 / stepMm) + 3 - i0;
  const rows = Math.ceil(v1 / stepMm) + 3 - j0;
  const ageMm = new Float64Array(columns * rows);
  const slope = new Float32Array(columns * rows);
  const { originMm, right, down } = plane;
  const sample: AgeSample = { ageMm: 0, dx: 0, dy: 0, dz: 0 };
  for (let j = 0; j < rows; j++) {
    const v = (j0 + j) * stepMm;
    for (let i = 0; i < columns; i++) {
      const u = (i0 + i) * stepMm;
      board.field.sample(
        originMm[0] + u * right[0] + v * down[0],
        originMm[1] + u * right[1] + v * down[1],
        originMm[2] + u * right[2] + v * down[2],
        sample,
      );
      const du = sample.dx * right[0] + sample.dy * right[1] + sample.dz * right[2];
      const dv = sample.dx * down[0] + sample.dy * down[1] + sample.dz * down[2];
      ageMm[j * columns + i] = sample.ageMm;
      slope[j * columns + i] = Math.sqrt(du * du + dv * dv);
    }
  }
  return { stepMm, i0, j0, columns, rows, ageMm, slope };
}
