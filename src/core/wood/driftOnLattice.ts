import { gradientNoise3, type NoiseSample } from '../random/gradientNoise3.js';
import type { Board } from './board.js';
import type { FaceLattice } from './faceLattice.js';
import type { FacePlane } from './facePlane.js';

/**
 * Slow colour drift of the wood on the nodes of a lattice, as density: broad clouds, and streaks
 * that follow the fibre as mineral and growth streaks do.
 *
 * @param shift the fibre frame's shift on the same nodes; left out (end grain), streaks are cut
 *   across and show as blots.
 */
export function driftOnLattice(
  board: Board,
  plane: FacePlane,
  lattice: FaceLattice,
  shift?: Float32Array,
): Float32Array {
  const { originMm, right, down } = plane;
  const { stepMm, i0, j0, columns, rows } = lattice;
  const drift = new Float32Array(columns * rows);
  const seed = board.treeSeed ^ 0xd21f7;
  const noise: NoiseSample = { value: 0, dx: 0, dy: 0, dz: 0 };
  const size = (board.texture * board.character.driftDensity) / 0.27;
  for (let j = 0; j < rows; j++) {
    const v = (j0 + j) * stepMm;
    for (let i = 0; i < columns; i++) {
      const u = (i0 + i) * stepMm;
      const x = originMm[0] + u * right[0] + v * down[0];
      const y = originMm[1] + u * right[1] + v * down[1];
      const z = originMm[2] + u * right[2] + v * down[2];
      gradientNoise3(x / 260, y / 45, z / 45, seed, noise);
      const cloud = noise.value;
      // On a long face across counts from the fibre; 3 % of depth keeps planed faces alike.
      const across = shift === undefined ? y : v - shift[j * columns + i]!;
      const deep = shift === undefined ? z : 0.03 * z;
      gradientNoise3(x / 130, across / 7, deep / 7, seed + 1, noise);
      const streak = noise.value;
      gradientNoise3(x / 80, across / 2.4, deep / 2.4, seed + 2, noise);
      drift[j * columns + i] = size * (0.8 * cloud + 0.6 * streak + 0.45 * noise.value);
    }
  }
  return drift;
}
