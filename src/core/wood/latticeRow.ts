import { ageFromLattice } from './ageFromLattice.js';
import type { FaceLattice } from './faceLattice.js';
import { fromLattice } from './fromLattice.js';
import type { PaintJob } from './paintJob.js';

/** Age radius, its slope and the colour drift at every pixel of one canvas row. */
export interface LatticeRow {
  readonly ageMm: Float64Array;
  readonly slope: Float32Array;
  readonly drift: Float32Array;
}

/**
 * Makes a reader of lattice rows. Where the piece lies square to its face (nearly always), the
 * lattice is first interpolated down to the row and then along it, which costs a quarter.
 *
 * @returns a function that fills and returns the same arrays for every row.
 */
export function latticeRow(job: PaintJob): (row: number) => LatticeRow {
  const { lattice, drift, canvas, faceFromPx: m } = job;
  const out: LatticeRow = {
    ageMm: new Float64Array(canvas.width),
    slope: new Float32Array(canvas.width),
    drift: new Float32Array(canvas.width),
  };
  if (m.b === 0 && m.d === 0) return squareReader(job, out);
  return (row) => {
    for (let column = 0; column < canvas.width; column++) {
      const u = m.a * (column + 0.5) + m.b * (row + 0.5) + m.c;
      const v = m.d * (column + 0.5) + m.e * (row + 0.5) + m.f;
      out.ageMm[column] = ageFromLattice(lattice, u, v);
      out.slope[column] = fromLattice(lattice, lattice.slope, u, v);
      out.drift[column] = fromLattice(lattice, drift, u, v);
    }
    return out;
  };
}

function squareReader(job: PaintJob, out: LatticeRow): (row: number) => LatticeRow {
  const { lattice, canvas, faceFromPx: m } = job;
  const { columns, stepMm } = lattice;
  const ages = new Float64Array(columns);
  const slopes = new Float32Array(columns);
  const drifts = new Float32Array(columns);
  return (row) => {
    const y = (m.e * (row + 0.5) + m.f) / stepMm - lattice.j0;
    downTo(lattice, job.drift, y, ages, slopes, drifts);
    for (let column = 0; column < canvas.width; column++) {
      const x = (m.a * (column + 0.5) + m.c) / stepMm - lattice.i0;
      const i = Math.min(columns - 3, Math.max(1, Math.floor(x)));
      const s = x - i;
      out.ageMm[column] =
        s * (-0.5 + s * (1 - 0.5 * s)) * ages[i - 1]! +
        (1 + s * s * (-2.5 + 1.5 * s)) * ages[i]! +
        s * (0.5 + s * (2 - 1.5 * s)) * ages[i + 1]! +
        s * s * (-0.5 + 0.5 * s) * ages[i + 2]!;
      out.slope[column] = slopes[i]! + (slopes[i + 1]! - slopes[i]!) * s;
      out.drift[column] = drifts[i]! + (drifts[i + 1]! - drifts[i]!) * s;
    }
    return out;
  };
}

/** Interpolates all columns of the lattice down to place `y` between its rows. */
function downTo(
  lattice: FaceLattice,
  drift: Float32Array,
  y: number,
  ages: Float64Array,
  slopes: Float32Array,
  drifts: Float32Array,
): void {
  const { columns, ageMm, slope } = lattice;
  const j = Math.min(lattice.rows - 3, Math.max(1, Math.floor(y)));
  const t = y - j;
  const b0 = t * (-0.5 + t * (1 - 0.5 * t));
  const b1 = 1 + t * t * (-2.5 + 1.5 * t);
  const b2 = t * (0.5 + t * (2 - 1.5 * t));
  const b3 = t * t * (-0.5 + 0.5 * t);
  const k1 = j * columns;
  for (let i = 0; i < columns; i++) {
    const k = k1 + i;
    ages[i] =
      b0 * ageMm[k - columns]! +
      b1 * ageMm[k]! +
      b2 * ageMm[k + columns]! +
      b3 * ageMm[k + 2 * columns]!;
    slopes[i] = slope[k]! + (slope[k + columns]! - slope[k]!) * t;
    drifts[i] = drift[k]! + (drift[k + columns]! - drift[k]!) * t;
  }
}
