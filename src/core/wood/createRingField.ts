import { createRandom } from '../random/createRandom.js';
import type { NoiseSample } from '../random/gradientNoise3.js';
import { growRings } from './growRings.js';
import { knotBulge } from './knotBulge.js';
import { pithWander } from './pithWander.js';
import type { ResolvedBoard } from './resolvedBoard.js';
import type { AgeSample, RingField } from './ringField.js';
import { ringWaviness } from './ringWaviness.js';
import { stemAxes } from './stemAxes.js';

/**
 * The ring field of a board: noisy cones about a wandering pith.
 *
 *     age = |(X, Y) - pith(Z)| + taper Z + waviness(X, Y, Z) |..| / (|..| + 12 mm) - knots
 *
 * in the stem frame (Z along the stem), carried to the board frame. Without waviness this is the
 * exact cone R_n(Z) = R_n - taper Z of trade.md 5.1.
 */
export function createRingField(board: ResolvedBoard): RingField {
  const { originMm, along, acrossX, acrossY } = stemAxes(board);
  const random = createRandom(board.treeSeed ^ 0x717e);
  const wanderX = pithWander(random, board.waviness);
  const wanderY = pithWander(random, board.waviness);
  const waviness = ringWaviness(board.treeSeed ^ 0x3a11, board.waviness);
  const bulge = knotBulge(board);
  const noise: NoiseSample = { value: 0, dx: 0, dy: 0, dz: 0 };
  const { taper, stationMm } = board;
  const calmMm = 12;
  // How far the pith has wandered along the board's width and depth at a station.
  const wanderIn = (axis: 1 | 2, z: number) =>
    wanderX.at(z) * acrossX[axis] + wanderY.at(z) * acrossY[axis];
  const stationAt = (xMm: number) => stationMm + (xMm - originMm[0]) / along[0];

  const spiral = Math.tan(board.spiralRad);
  const gradient: AgeSample = { ageMm: 0, dx: 0, dy: 0, dz: 0 };

  return {
    rings: growRings(board.treeSeed ^ 0x4196, board.ringWidthMm, board.ringWidthLogSd),
    sample(xMm, yMm, zMm, out) {
      const px = xMm - originMm[0];
      const py = yMm - originMm[1];
      const pz = zMm - originMm[2];
      const z = stationMm + px * along[0] + py * along[1] + pz * along[2];
      const stemX = px * acrossX[0] + py * acrossX[1] + pz * acrossX[2];
      const stemY = px * acrossY[0] + py * acrossY[1] + pz * acrossY[2];
      const a = stemX - wanderX.at(z);
      const b = stemY - wanderY.at(z);
      const radius = Math.sqrt(a * a + b * b) + 1e-9;
      waviness(stemX, stemY, z, noise);
      const calm = radius / (radius + calmMm);
      const calmSlope = (noise.value * calmMm) / ((radius + calmMm) * (radius + calmMm));
      const radial = (1 + calmSlope) / radius;
      const gx = a * radial + calm * noise.dx;
      const gy = b * radial + calm * noise.dy;
      const gz =
        taper + calm * noise.dz - radial * (a * wanderX.slopeAt(z) + b * wanderY.slopeAt(z));
      out.ageMm = radius + taper * z + calm * noise.value;
      out.dx = gx * acrossX[0] + gy * acrossY[0] + gz * along[0];
      out.dy = gx * acrossX[1] + gy * acrossY[1] + gz * along[1];
      out.dz = gx * acrossX[2] + gy * acrossY[2] + gz * along[2];
      bulge(xMm, yMm, zMm, out);
    },
    pithAt(xMm) {
      const z = stationAt(xMm);
      return {
        yMm: originMm[1] + (z - stationMm) * along[1] + wanderIn(1, z),
        zMm: originMm[2] + (z - stationMm) * along[2] + wanderIn(2, z),
      };
    },
    fibre(xMm, yMm, zMm, out) {
      this.sample(xMm, yMm, zMm, gradient);
      const size = Math.hypot(gradient.dx, gradient.dy, gradient.dz) || 1;
      const [nx, ny, nz] = [gradient.dx / size, gradient.dy / size, gradient.dz / size];
      const z = stationAt(xMm);
      const [sx, sy] = [wanderX.slopeAt(z), wanderY.slopeAt(z)];
      const ax = along[0] + sx * acrossX[0] + sy * acrossY[0];
      const ay = along[1] + sx * acrossX[1] + sy * acrossY[1];
      const az = along[2] + sx * acrossX[2] + sy * acrossY[2];
      // Around the stem: outward normal x axis, times the tangent of the spiral angle.
      const fx = ax + spiral * (ny * az - nz * ay);
      const fy = ay + spiral * (nz * ax - nx * az);
      const fz = az + spiral * (nx * ay - ny * ax);
      const across = fx * nx + fy * ny + fz * nz;
      out.dx = fx - across * nx;
      out.dy = fy - across * ny;
      out.dz = fz - across * nz;
    },
  };
}
