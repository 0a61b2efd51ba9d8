import type { ResolvedBoard } from './resolvedBoard.js';
import type { AgeSample } from './ringField.js';

/**
 * Adds the bulge of the rings about each knot: age falls by 1.1 R exp(-d^2 / 2 (1.9 R)^2), with d
 * the distance from the branch axis (pith to face point) and R its radius, so that the ring lines
 * of a face run around the branch.
 */
export function knotBulge(
  board: ResolvedBoard,
): (x: number, y: number, z: number, out: AgeSample) => void {
  const knots = board.knots.map((knot) => {
    const ey = knot.yMm - board.pithYMm;
    const ez = -board.pithDepthMm;
    const length = Math.hypot(ey, ez) || 1;
    return {
      ...knot,
      ey: ey / length,
      ez: ez / length,
      height: 1.1 * knot.radiusMm,
      spread: 1.9 * knot.radiusMm,
    };
  });
  return (x, y, z, out) => {
    for (const knot of knots) {
      const dx = x - knot.xMm;
      const dy = y - knot.yMm;
      const along = dy * knot.ey + z * knot.ez;
      const py = dy - along * knot.ey;
      const pz = z - along * knot.ez;
      const spread2 = knot.spread * knot.spread;
      const bulge = knot.height * Math.exp(-(dx * dx + py * py + pz * pz) / (2 * spread2));
      out.ageMm -= bulge;
      out.dx += (bulge * dx) / spread2;
      out.dy += (bulge * py) / spread2;
      out.dz += (bulge * pz) / spread2;
    }
  };
}
