import type { Board } from './board.js';
import type { FacePlane } from './facePlane.js';
import type { FibreSample } from './ringField.js';

const fibre: FibreSample = { dx: 1, dy: 0, dz: 0 };

/** Slope dv/du of the fibre as it shows at face point (u, v) mm. */
export function fibreSlopeAt(board: Board, plane: FacePlane, uMm: number, vMm: number): number {
  const { originMm, right, down } = plane;
  board.field.fibre(
    originMm[0] + uMm * right[0] + vMm * down[0],
    originMm[1] + uMm * right[1] + vMm * down[1],
    originMm[2] + uMm * right[2] + vMm * down[2],
    fibre,
  );
  const du = fibre.dx * right[0] + fibre.dy * right[1] + fibre.dz * right[2];
  const dv = fibre.dx * down[0] + fibre.dy * down[1] + fibre.dz * down[2];
  return dv / du;
}
