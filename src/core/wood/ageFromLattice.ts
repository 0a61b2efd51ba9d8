import type { FaceLattice } from './faceLattice.js';

/** Cubic (Catmull-Rom) interpolation of the age radius at face point (u, v) mm. */
export function ageFromLattice(lattice: FaceLattice, uMm: number, vMm: number): number {
  const { ageMm, columns } = lattice;
  const x = uMm / lattice.stepMm - lattice.i0;
  const y = vMm / lattice.stepMm - lattice.j0;
  const i = Math.min(columns - 3, Math.max(1, Math.floor(x)));
  const j = Math.min(lattice.rows - 3, Math.max(1, Math.floor(y)));
  const s = x - i;
  const t = y - j;
  const a0 = s * (-0.5 + s * (1 - 0.5 * s));
  const a1 = 1 + s * s * (-2.5 + 1.5 * s);
  const a2 = s * (0.5 + s * (2 - 1.5 * s));
  const a3 = s * s * (-0.5 + 0.5 * s);
  const b0 = t * (-0.5 + t * (1 - 0.5 * t));
  const b1 = 1 + t * t * (-2.5 + 1.5 * t);
  const b2 = t * (0.5 + t * (2 - 1.5 * t));
  const b3 = t * t * (-0.5 + 0.5 * t);
  const k = (j - 1) * columns + i - 1;
  const k1 = k + columns;
  const k2 = k1 + columns;
  const k3 = k2 + columns;
  return (
    b0 * (a0 * ageMm[k]! + a1 * ageMm[k + 1]! + a2 * ageMm[k + 2]! + a3 * ageMm[k + 3]!) +
    b1 * (a0 * ageMm[k1]! + a1 * ageMm[k1 + 1]! + a2 * ageMm[k1 + 2]! + a3 * ageMm[k1 + 3]!) +
    b2 * (a0 * ageMm[k2]! + a1 * ageMm[k2 + 1]! + a2 * ageMm[k2 + 2]! + a3 * ageMm[k2 + 3]!) +
    b3 * (a0 * ageMm[k3]! + a1 * ageMm[k3 + 1]! + a2 * ageMm[k3 + 2]! + a3 * ageMm[k3 + 3]!)
  );
}
