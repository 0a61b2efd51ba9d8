import type { FaceLattice } from './faceLattice.js';

/** Bilinear interpolation of a plane of lattice values at face point (u, v) mm. */
export function fromLattice(
  lattice: FaceLattice,
  values: Float32Array,
  uMm: number,
  vMm: number,
): number {
  const { columns } = lattice;
  const x = uMm / lattice.stepMm - lattice.i0;
  const y = vMm / lattice.stepMm - lattice.j0;
  const i = Math.min(columns - 2, Math.max(0, Math.floor(x)));
  const j = Math.min(lattice.rows - 2, Math.max(0, Math.floor(y)));
  const s = x - i;
  const k = j * columns + i;
  const upper = values[k]! + (values[k + 1]! - values[k]!) * s;
  const lower = values[k + columns]! + (values[k + columns + 1]! - values[k + columns]!) * s;
  return upper + (lower - upper) * (y - j);
}
