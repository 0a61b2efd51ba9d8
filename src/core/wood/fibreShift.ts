import type { Board } from './board.js';
import type { FaceLattice } from './faceLattice.js';
import type { FacePlane } from './facePlane.js';
import { fibreSlopeAt } from './fibreSlopeAt.js';

const stepMm = 2;

/** Catmull-Rom weight of the value at signed distance `d` nodes (|d| < 2). */
function cubicWeight(d: number): number {
  const a = Math.abs(d);
  return a < 1 ? 1 + a * a * (1.5 * a - 2.5) : a < 2 ? 2 + a * (-4 + a * (2.5 - 0.5 * a)) : 0;
}

function cubicAt(values: Float64Array, offset: number, count: number, place: number): number {
  const clamped = Math.min(count - 1, Math.max(0, place));
  const first = Math.floor(clamped) - 1;
  let sum = 0;
  for (let k = first; k < first + 4; k++) {
    const node = Math.min(count - 1, Math.max(0, k));
    sum += cubicWeight(clamped - k) * values[offset + node]!;
  }
  return sum;
}

/**
 * How far each fibre has moved in v since the board's mid-length, on a lattice's nodes.
 *
 * A fibre is followed outwards from mid-length column by column (2 mm):
 *
 *     D(u + h, v) = h s + D(u, v - h s),  s the mean slope of the two columns,
 *
 * so the frame is the same whichever part of the board is drawn.
 */
export function fibreShift(board: Board, plane: FacePlane, lattice: FaceLattice): Float32Array {
  const middle = board.lengthMm / 2 - plane.originMm[0];
  const u0 = lattice.i0 * lattice.stepMm;
  const u1 = u0 + (lattice.columns - 1) * lattice.stepMm;
  const before = Math.max(0, Math.ceil((middle - u0) / stepMm) + 2);
  const after = Math.max(0, Math.ceil((u1 - middle) / stepMm) + 2);
  // Fibres drift in from beyond the lattice: room for a slope of 8 %.
  const room = Math.ceil((10 + 0.08 * stepMm * Math.max(before, after)) / stepMm);
  const j0 = Math.floor((lattice.j0 * lattice.stepMm) / stepMm) - room;
  const rows = Math.ceil((lattice.rows * lattice.stepMm) / stepMm) + 2 * room + 1;
  const shift = new Float64Array((before + after + 1) * rows);
  const slopesOf = (column: number) =>
    Float64Array.from({ length: rows }, (_, j) =>
      fibreSlopeAt(board, plane, middle + column * stepMm, (j0 + j) * stepMm),
    );
  for (const [way, count] of [
    [-1, before],
    [1, after],
  ] as const) {
    let slopes = slopesOf(0);
    for (let column = 1; column <= count; column++) {
      const next = slopesOf(way * column);
      const from = (before + way * (column - 1)) * rows;
      const to = (before + way * column) * rows;
      for (let j = 0; j < rows; j++) {
        const moved = (way * stepMm * (slopes[j]! + next[j]!)) / 2;
        shift[to + j] = moved + cubicAt(shift, from, rows, j - moved / stepMm);
      }
      slopes = next;
    }
  }
  return onLattice(lattice, shift, rows, (u) => (u - middle) / stepMm + before, j0);
}

function onLattice(
  lattice: FaceLattice,
  shift: Float64Array,
  rows: number,
  columnOf: (uMm: number) => number,
  j0: number,
): Float32Array {
  const out = new Float32Array(lattice.columns * lattice.rows);
  const columns = shift.length / rows;
  for (let i = 0; i < lattice.columns; i++) {
    const place = columnOf((lattice.i0 + i) * lattice.stepMm);
    const first = Math.floor(place) - 1;
    const weights = [0, 1, 2, 3].map((k) => cubicWeight(place - first - k));
    const starts = [0, 1, 2, 3].map((k) => rows * Math.min(columns - 1, Math.max(0, first + k)));
    for (let j = 0; j < lattice.rows; j++) {
      const row = ((lattice.j0 + j) * lattice.stepMm) / stepMm - j0;
      let sum = 0;
      for (let k = 0; k < 4; k++) sum += weights[k]! * cubicAt(shift, starts[k]!, rows, row);
      out[j * lattice.columns + i] = sum;
    }
  }
  return out;
}
