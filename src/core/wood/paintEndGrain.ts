import { StreakNoise } from '../random/streakNoise.js';
import { ageFromLattice } from './ageFromLattice.js';
import { fromLattice } from './fromLattice.js';
import type { PaintJob } from './paintJob.js';
import { meanRingDensity } from './ringProfile.js';
import { scatterOnFace } from './scatterOnFace.js';
import { splatDash } from './splatDash.js';

type EndJob = Pick<PaintJob, 'board' | 'profile' | 'lattice' | 'drift' | 'canvas' | 'textureSeed'>;

/** End grain drinks light: it looks this much denser than the long face. */
const endDensity = 0.22;

/** Paints rings, cut fibre ends, vessels as dots and rays as lines that run from the pith. */
export function paintEndGrain(
  job: EndJob,
  pith: { readonly xMm: number; readonly yMm: number },
): void {
  const { board, profile, lattice, drift, canvas } = job;
  const { character, texture } = board;
  const s = canvas.pxPerMm;
  const ringSize = 1.15 * board.contrast * character.ringDensity;
  const [fuzz, grit] = [
    new StreakNoise(job.textureSeed, 0.6, 0.6),
    new StreakNoise(job.textureSeed + 1, 0.2, 0.2),
  ];
  const gritShare = Math.min(1, 0.2 * s);
  for (let row = 0; row < canvas.height; row++) {
    const y = (row + 0.5) / s;
    for (let column = 0; column < canvas.width; column++) {
      const x = (column + 0.5) / s;
      const rough = 0.5 * fuzz.at(x, y) + gritShare * grit.at(x, y);
      const age = ageFromLattice(lattice, x, y) + 0.04 * texture * rough;
      canvas.tone[row * canvas.width + column] =
        endDensity +
        ringSize * meanRingDensity(profile, age, fromLattice(lattice, lattice.slope, x, y) / s) +
        1.3 * texture * character.fibreDensity * rough +
        fromLattice(lattice, drift, x, y);
    }
  }
  if (texture > 0) {
    paintRayLines(job, pith);
    paintVesselDots(job);
  }
}

function paintVesselDots(job: EndJob): void {
  const { board, profile, lattice, canvas } = job;
  const s = canvas.pxPerMm;
  const range = { x0: 0, x1: canvas.width / s, y0: 0, y1: canvas.height / s };
  board.character.pores.forEach((kind, index) => {
    const [low, high] = kind.diameterMm;
    // Cut square, a vessel is a dot, and there are far more of them to the mm2 than dashes.
    const perMm2 = Math.min(14, (kind.perMm2 * (kind.lengthMm[0] + kind.lengthMm[1])) / high / 5);
    scatterOnFace(range, perMm2, 2, 2, job.textureSeed + 31 * index, (x, y, random) => {
      const place = (ageFromLattice(lattice, x, y) - profile.fromMm) / profile.stepMm;
      const early = profile.early[Math.min(profile.early.length - 1, Math.max(0, place | 0))]!;
      const home = kind.where === 'early' ? early : kind.where === 'late' ? 1 - early : 1;
      if (random() > home) return;
      const size = (low + (high - low) * random()) * s;
      const density = board.texture * (kind.density[0] + 0.6 * kind.density[1] * random());
      const [px, py] = [x * s, y * s];
      const half = size / 2;
      splatDash(
        canvas.pores,
        canvas.width,
        canvas.height,
        px - half,
        py,
        px + half,
        py,
        size,
        density,
      );
    });
  });
}

function paintRayLines(job: EndJob, pith: { readonly xMm: number; readonly yMm: number }): void {
  const { board, canvas } = job;
  const rays = board.character.rays;
  const s = canvas.pxPerMm;
  const broad = rays !== null && rays.thicknessMm[1] > 0.2;
  const thickness = rays?.thicknessMm ?? ([0.03, 0.05] as const);
  const lengthMm = broad ? 18 : 7;
  const perMm2 = broad ? 0.035 : 0.25;
  const range = {
    x0: -lengthMm,
    x1: canvas.width / s + lengthMm,
    y0: -lengthMm,
    y1: canvas.height / s + lengthMm,
  };
  scatterOnFace(range, perMm2, 8, 8, job.textureSeed + 977, (x, y, random) => {
    const [dx, dy] = [x - pith.xMm, y - pith.yMm];
    const radius = Math.hypot(dx, dy);
    if (radius < 2) return;
    const half = Math.min(radius - 1, (lengthMm / 2) * (0.4 + 1.2 * random()));
    const [ux, uy] = [(half * dx) / radius, (half * dy) / radius];
    const width = (thickness[0] + (thickness[1] - thickness[0]) * random() ** 2) * 0.8;
    splatDash(
      canvas.tone,
      canvas.width,
      canvas.height,
      (x - ux) * s,
      (y - uy) * s,
      (x + ux) * s,
      (y + uy) * s,
      width * s,
      board.texture * (broad ? -0.28 : -0.12) * (0.5 + 0.5 * random()),
    );
  });
}
