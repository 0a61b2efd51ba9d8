/**
 * Spread of line directions, rad, from their coherence: sqrt((1 - coherence) / 2), the double-angle
 * vector's shortening for a small spread. How far off the ring line fibre may point there.
 *
 * @param coherence length of the summed double-angle vectors over their energy, 0 to 1.
 */
export function directionSpreadRad(coherence: number): number {
  return Math.sqrt(Math.max(0, 1 - coherence) / 2);
}
