import { ageFromLattice } from './ageFromLattice.js';
import type { FaceLattice } from './faceLattice.js';
import { fromLattice } from './fromLattice.js';
import type { PaintJob } from './paintJob.js';

/** Age radius, its slope, colour drift and fibre shift at every pixel of one canvas row. */
export interface LatticeRow {
  readonly ageMm: Float64Array;
  readonly slope: Float32Array;
  readonly drift: Float32Array;
  /** Face v less the across-fibre place, mm. */
  readonly shift: Float32Array;
}

/**
 * Makes a reader of lattice rows. Where the piece lies square to its face (nearly always), the
 * lattice is first interpolated down to the row and then along it, which costs a quarter.
 *
 * @returns a function that fills and returns the same arrays for every row.
 */
export function latticeRow(job: PaintJob): (row: number) => LatticeRow {
  const { lattice, drift, frame, canvas, faceFromPx: m } = job;
  const out: LatticeRow = {
    ageMm: new Float64Array(canvas.width),
    slope: new Float32Array(canvas.width),
    drift: new Float32Array(canvas.width),
    shift: new Float32Array(canvas.width),
  };
  if (m.b === 0 && m.d === 0) return squareReader(job, out);
  return (row) => {
    for (let column = 0; column < canvas.width; column++) {
      const u = m.a * (column + 0.5) + m.b * (row + 0.5) + m.c;
      const v = m.d * (column + 0.5) + m.e * (row + 0.5) + m.f;
      out.ageMm[column] = ageFromLattice(lattice, u, v);
      out.slope[column] = fromLattice(lattice, lattice.slope, u, v);
      out.drift[column] = fromLattice(lattice, drift, u, v);
      out.shift[column] = fromLattice(lattice, frame.shift, u, v);
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
  const shifts = new Float32Array(columns);
  return (row) => {
    const y = (m.e * (row + 0.5) + m.f) / stepMm - lattice.j0;
    cubicDown(lattice, y, ages);
    linearDown(lattice, lattice.slope, y, slopes);
    linearDown(lattice, job.drift, y, drifts);
    linearDown(lattice, job.frame.shift, y, shifts);
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
      out.shift[column] = shifts[i]! + (shifts[i + 1]! - shifts[i]!) * s;
    }
    return out;
  };
}

const rowBelow = (lattice: FaceLattice, y: number) =>
  Math.min(lattice.rows - 3, Math.max(1, Math.floor(y)));

/** Age of all columns at place `y` between the lattice's rows. */
function cubicDown(lattice: FaceLattice, y: number, ages: Float64Array): void {
  const { columns, ageMm } = lattice;
  const j = rowBelow(lattice, y);
  const t = y - j;
  const b0 = t * (-0.5 + t * (1 - 0.5 * t));
  const b1 = 1 + t * t * (-2.5 + 1.5 * t);
  const b2 = t * (0.5 + t * (2 - 1.5 * t));
  const b3 = t * t * (-0.5 + 0.5 * t);
  for (let i = 0, k = j * columns; i < columns; i++, k++) {
    ages[i] =
      b0 * ageMm[k - columns]! +
      b1 * ageMm[k]! +
      b2 * ageMm[k + columns]! +
      b3 * ageMm[k + 2 * columns]!;
  }
}

/** Values of all columns at place `y` between the lattice's rows. */
function linearDown(
  lattice: FaceLattice,
  values: Float32Array,
  y: number,
  out: Float32Array,
): void {
  const { columns } = lattice;
  const j = rowBelow(lattice, y);
  const t = y - j;
  for (let i = 0, k = j * columns; i < columns; i++, k++) {
    out[i] = values[k]! + (values[k + columns]! - values[k]!) * t;
  }
}
