import { ageFromLattice } from './ageFromLattice.js';
import { fibreRange } from './fibreRange.js';
import { invertPlacement } from './invertPlacement.js';
import type { PaintJob } from './paintJob.js';
import { scatterOnFace } from './scatterOnFace.js';
import { splatDash } from './splatDash.js';
import type { PoreKind } from './woodCharacter.js';

const between = (range: readonly [number, number], t: number) =>
  range[0] + (range[1] - range[0]) * t;

/** How much at home a pore of this kind is at an age radius, 0 to 1. */
function homeliness(job: PaintJob, kind: PoreKind, ageMm: number): number {
  if (kind.where === 'everywhere') return 1;
  const { profile } = job;
  const place = Math.round((ageMm - profile.fromMm) / profile.stepMm);
  const early = profile.early[Math.min(profile.early.length - 1, Math.max(0, place))]!;
  return kind.where === 'early' ? early : 1 - early;
}

/** Paints vessels (or resin ducts) as dashes along the fibre where the ring has them. */
export function paintPores(job: PaintJob): void {
  const { board, canvas, frame, lattice } = job;
  const toPx = invertPlacement(job.faceFromPx);
  const range = fibreRange(job, 10);
  board.character.pores.forEach((kind, index) => {
    const seed = job.textureSeed + 7001 * (index + 1);
    scatterOnFace(range, kind.perMm2, 8, 4, seed, (along, across, random) => {
      const v = frame.faceVMm(along, across);
      if (random() > homeliness(job, kind, ageFromLattice(lattice, along, v))) return;
      const spread = random();
      const halfMm = 0.5 * between(kind.lengthMm, spread * spread);
      const thicknessPx = between(kind.diameterMm, random()) * canvas.pxPerMm;
      const x0 = along - halfMm;
      const x1 = along + halfMm;
      const y0 = frame.faceVMm(x0, across);
      const y1 = frame.faceVMm(x1, across);
      splatDash(
        canvas.pores,
        canvas.width,
        canvas.height,
        toPx.a * x0 + toPx.b * y0 + toPx.c,
        toPx.d * x0 + toPx.e * y0 + toPx.f,
        toPx.a * x1 + toPx.b * y1 + toPx.c,
        toPx.d * x1 + toPx.e * y1 + toPx.f,
        thicknessPx,
        board.texture * between(kind.density, random()),
      );
    });
  });
}
