import { wrapHalfTurnRad } from '../units/wrapHalfTurnRad.js';
import type { Board } from './board.js';
import type { FacePlane } from './facePlane.js';
import type { AgeSample } from './ringField.js';
import { ringIndexAt } from './ringTable.js';

/** The ring line through one point of a face, from the model's own gradient. */
export interface RingLine {
  /** Direction from +u towards +v, rad, in (-pi/2, pi/2]. */
  readonly angleRad: number;
  /** Local distance between ring lines on the face: ring width / |gradient in the face|, mm. */
  readonly spacingMm: number;
  readonly ageMm: number;
  /** Slope of the age radius along u and v. */
  readonly du: number;
  readonly dv: number;
}

const sample: AgeSample = { ageMm: 0, dx: 0, dy: 0, dz: 0 };

/** Exact ring-line direction and spacing at face point (u, v) mm. */
export function ringLineAt(board: Board, plane: FacePlane, uMm: number, vMm: number): RingLine {
  const { originMm, right, down } = plane;
  board.field.sample(
    originMm[0] + uMm * right[0] + vMm * down[0],
    originMm[1] + uMm * right[1] + vMm * down[1],
    originMm[2] + uMm * right[2] + vMm * down[2],
    sample,
  );
  const du = sample.dx * right[0] + sample.dy * right[1] + sample.dz * right[2];
  const dv = sample.dx * down[0] + sample.dy * down[1] + sample.dz * down[2];
  const { innerMm } = board.field.rings;
  const ring = ringIndexAt(board.field.rings, sample.ageMm);
  return {
    angleRad: wrapHalfTurnRad(Math.atan2(du, -dv)),
    spacingMm: (innerMm[ring + 1]! - innerMm[ring]!) / Math.hypot(du, dv),
    ageMm: sample.ageMm,
    du,
    dv,
  };
}
