import type { RingNormal } from './ringNormals.js';

/** A point where the ring normals meet, mm. */
export interface Pith {
  readonly xMm: number;
  readonly yMm: number;
  readonly seMm: number;
  /** Median angle by which the normals point past it, rad. */
  readonly missRad: number;
}

const rounds = 12;
/** Normals farther off the pith than this lose their say, rad (6 deg). */
const usualErrorRad = 0.1;
const stretches = 8;
/** Nearer than this a normal's direction says little, mm. */
const leastDistanceMm = 4;

/**
 * The pith by robust least squares: the point p that the ring normals' lines pass nearest to,
 * min over p of sum w rho(angle between n and p - x), by reweighting each line's squared distance
 * to p by 1 / |p - x|^2 and by how far off it points (Cauchy). The error is the jackknife's over
 * eight stretches of the width.
 *
 * @returns null with fewer than 30 normals.
 */
export function pithOf(normals: readonly RingNormal[], widthMm: number): Pith | null {
  const whole = meet(normals);
  if (!whole || normals.length < 30) return null;
  const parts = Array.from({ length: stretches }, (_, k) =>
    meet(normals.filter((n) => Math.floor((stretches * n.xMm) / widthMm) !== k)),
  ).filter((p) => p !== null);
  const mean = (pick: (p: { x: number; y: number }) => number) =>
    parts.reduce((sum, p) => sum + pick(p), 0) / parts.length;
  const [mx, my] = [mean((p) => p.x), mean((p) => p.y)];
  const spread = parts.reduce((sum, p) => sum + (p.x - mx) ** 2 + (p.y - my) ** 2, 0);
  const seMm = Math.sqrt((spread * (parts.length - 1)) / parts.length);
  return { xMm: whole.x, yMm: whole.y, seMm, missRad: medianMiss(normals, whole) };
}

function medianMiss(normals: readonly RingNormal[], p: { x: number; y: number }): number {
  const miss = normals
    .map(({ xMm, yMm, nx, ny }) => {
      const distance = Math.max(leastDistanceMm, Math.hypot(p.x - xMm, p.y - yMm));
      return Math.abs(((p.y - yMm) * nx - (p.x - xMm) * ny) / distance);
    })
    .sort((a, b) => a - b);
  return miss[miss.length >> 1] ?? 1;
}

function meet(normals: readonly RingNormal[]): { x: number; y: number } | null {
  let p: { x: number; y: number } | null = null;
  for (let round = 0; round < rounds; round++) {
    let [axx, axy, ayy, bx, by] = [0, 0, 0, 0, 0];
    for (const { xMm, yMm, nx, ny, weight } of normals) {
      const [tx, ty] = [-ny, nx];
      let w = weight;
      if (p) {
        const distance = Math.max(leastDistanceMm, Math.hypot(p.x - xMm, p.y - yMm));
        const off = ((p.x - xMm) * tx + (p.y - yMm) * ty) / distance;
        w /= distance * distance * (1 + (off / usualErrorRad) ** 2);
      }
      const c = xMm * tx + yMm * ty;
      axx += w * tx * tx;
      axy += w * tx * ty;
      ayy += w * ty * ty;
      bx += w * tx * c;
      by += w * ty * c;
    }
    const det = axx * ayy - axy * axy;
    if (!(det > 1e-12 * (axx + ayy) ** 2)) return p;
    p = { x: (bx * ayy - by * axy) / det, y: (by * axx - bx * axy) / det };
  }
  return p;
}
