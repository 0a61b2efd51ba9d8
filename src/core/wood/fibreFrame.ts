import type { Board } from './board.js';
import type { FaceLattice } from './faceLattice.js';
import type { FacePlane } from './facePlane.js';
import { fibreShift } from './fibreShift.js';
import { fromLattice } from './fromLattice.js';

/**
 * Where a face point lies in its fibre: along it and across it. Texture is drawn in this frame,
 * so that streaks and pores follow the fibre (slope, wander, spiral, way round a knot).
 */
export interface FibreFrame {
  /** v less the across-fibre place, on the nodes of the piece's lattice, mm. */
  readonly shift: Float32Array;
  /** Across-fibre place of face point (u, v), mm. */
  acrossMm(uMm: number, vMm: number): number;
  /** Face v of the point `acrossMm` across the fibre at face u. */
  faceVMm(uMm: number, acrossMm: number): number;
}

/** Follows the fibre over the part of a face that `lattice` covers. */
export function fibreFrame(board: Board, plane: FacePlane, lattice: FaceLattice): FibreFrame {
  const shift = fibreShift(board, plane, lattice);
  partAboutKnots(board, plane, lattice, shift);
  return {
    shift,
    acrossMm: (u, v) => v - fromLattice(lattice, shift, u, v),
    faceVMm(u, across) {
      let v = across;
      for (let round = 0; round < 6; round++) v = across + fromLattice(lattice, shift, u, v);
      return v;
    },
  };
}

/** Fibre parts about a knot as a stream parts about a stone, flat inside the branch itself. */
function partAboutKnots(
  board: Board,
  plane: FacePlane,
  lattice: FaceLattice,
  shift: Float32Array,
): void {
  for (const knot of board.knots) {
    const knotU = knot.xMm - plane.originMm[0];
    const knotV = (knot.yMm - plane.originMm[1]) * plane.down[1];
    const spread = 1.4 * knot.radiusMm * knot.radiusMm;
    for (let k = 0; k < shift.length; k++) {
      const du = (lattice.i0 + (k % lattice.columns)) * lattice.stepMm - knotU;
      const dv = (lattice.j0 + Math.floor(k / lattice.columns)) * lattice.stepMm - knotV;
      shift[k]! += (dv * spread) / (spread + dv * dv + 0.12 * du * du);
    }
  }
}
