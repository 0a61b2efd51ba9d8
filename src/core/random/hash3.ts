/**
 * A scrambled 32-bit number for a lattice point: neighbouring points give unrelated values.
 *
 * Used wherever texture must be the same whichever part of a board is drawn, so that nothing may
 * depend on the order of drawing. Finaliser constants: the "lowbias32" family (Wellons 2018).
 *
 * @param x @param y @param z lattice point, whole numbers.
 * @param seed whole number; another seed is another lattice.
 * @returns a whole number in 0 .. 2^32 - 1.
 */
export function hash3(x: number, y: number, z: number, seed: number): number {
  let h =
    Math.imul(x, 0x9e3779b1) ^
    Math.imul(y, 0x85ebca77) ^
    Math.imul(z, 0xc2b2ae3d) ^
    Math.imul(seed, 0x27d4eb2f);
  h = Math.imul(h ^ (h >>> 16), 0x21f0aaad);
  h = Math.imul(h ^ (h >>> 15), 0x735a2d97);
  return (h ^ (h >>> 15)) >>> 0;
}
