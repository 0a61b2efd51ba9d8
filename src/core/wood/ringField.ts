import type { RingTable } from './ringTable.js';

/** Age radius and its exact slope along the board's axes. */
export interface AgeSample {
  ageMm: number;
  dx: number;
  dy: number;
  dz: number;
}

/** Fibre direction along the board's axes. */
export interface FibreSample {
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
  /**
   * Direction of the fibre at a point, board frame, not unit: the stem axis turned by the spiral,
   * kept within the ring (cells are laid down along the ring's surface, never across it).
   */
  fibre(xMm: number, yMm: number, zMm: number, out: FibreSample): void;
}
