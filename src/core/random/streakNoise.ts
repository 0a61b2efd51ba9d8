import { hash3 } from './hash3.js';

/**
 * Value noise on a long, thin lattice: the look of fibre, long along x and fine across.
 *
 * Values are uniform in [-1, 1] at the lattice points, joined smoothly. Every row of the lattice
 * is shifted by its own amount so that streak ends never line up across the board. The corners in
 * use are kept, so walking along x costs almost nothing.
 */
export class StreakNoise {
  private row = Number.NaN;
  private readonly near = { shift: 0, cell: Number.NaN, from: 0, to: 0 };
  private readonly far = { shift: 0, cell: Number.NaN, from: 0, to: 0 };

  /**
   * @param seed whole number.
   * @param alongMm cell length along the fibre.
   * @param acrossMm cell size across it.
   */
  constructor(
    private readonly seed: number,
    private readonly alongMm: number,
    private readonly acrossMm: number,
  ) {}

  /** The noise at `xMm` along and `yMm` across the fibre, in [-1, 1]. */
  at(xMm: number, yMm: number): number {
    const y = yMm / this.acrossMm;
    const row = Math.floor(y);
    if (row !== this.row) this.enter(row);
    const x = xMm / this.alongMm;
    const v = y - row;
    const near = this.along(this.near, row, x);
    const far = this.along(this.far, row + 1, x);
    return near + (far - near) * v * v * (3 - 2 * v);
  }

  private along(line: typeof this.near, row: number, x: number): number {
    const shifted = x + line.shift;
    const cell = Math.floor(shifted);
    if (cell !== line.cell) {
      line.cell = cell;
      line.from = hash3(cell, row, 0, this.seed) / 2147483648 - 1;
      line.to = hash3(cell + 1, row, 0, this.seed) / 2147483648 - 1;
    }
    const u = shifted - cell;
    return line.from + (line.to - line.from) * u * u * (3 - 2 * u);
  }

  private enter(row: number): void {
    this.row = row;
    this.near.shift = hash3(0, row, 1, this.seed) / 4294967296;
    this.far.shift = hash3(0, row + 1, 1, this.seed) / 4294967296;
    this.near.cell = Number.NaN;
    this.far.cell = Number.NaN;
  }
}
