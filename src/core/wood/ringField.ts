import type { RingTable } from './ringTable.js';

/** Age radius and its exact slope along the board's axes. */
export interface AgeSample {
  ageMm: number;
  dx: number;
  dy: number;
  dz: number;
}

/**
 * The rings as one smooth scalar field in the board frame: the age radius, in mm of wood grown.
 * Surfaces of equal age are the ring borders; its gradient is exact, never taken from a picture.
 */
export interface RingField {
  readonly rings: RingTable;
  /** Writes the age radius and its gradient at a point of the board, mm. */
  sample(xMm: number, yMm: number, zMm: number, out: AgeSample): void;
  /** Where the pith crosses the plane x = xMm: place across the width and depth, mm. */
  pithAt(xMm: number): { readonly yMm: number; readonly zMm: number };
  /** Direction of the fibre on a long face, dy/dx, and its integral from x = 0, mm. */
  fibreDriftMm(xMm: number): number;
  fibreSlope(xMm: number): number;
}
