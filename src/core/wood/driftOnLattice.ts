import { gradientNoise3, type NoiseSample } from '../random/gradientNoise3.js';
import type { Board } from './board.js';
import type { FaceLattice } from './faceLattice.js';
import type { FacePlane } from './facePlane.js';

/**
 * Slow colour drift of the wood on the nodes of a lattice, as density: broad clouds and, along
 * the stem, mineral streaks. Solid noise in the board, so that every face agrees.
 */
export function driftOnLattice(board: Board, plane: FacePlane, lattice: FaceLattice): Float32Array {
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
      gradientNoise3(x / 130, y / 7, z / 7, seed + 1, noise);
      const streak = noise.value;
      gradientNoise3(x / 80, y / 2.4, z / 2.4, seed + 2, noise);
      drift[j * columns + i] = size * (0.8 * cloud + 0.6 * streak + 0.45 * noise.value);
    }
  }
  return drift;
}
