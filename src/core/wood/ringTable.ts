/** The tree's rings, counted from the pith: ring n reaches from innerMm[n] to innerMm[n + 1]. */
export interface RingTable {
  /** Age radii of the ring borders, rising; one more entry than there are rings. */
  readonly innerMm: Float64Array;
}

/** Which ring holds the age radius `ageMm` (clamped to the table). */
export function ringIndexAt(rings: RingTable, ageMm: number): number {
  const { innerMm } = rings;
  let low = 0;
  let high = innerMm.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (innerMm[middle]! <= ageMm) low = middle;
    else high = middle - 1;
  }
  return low;
}
