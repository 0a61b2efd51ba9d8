import { StreakNoise } from '../random/streakNoise.js';
import { fibreRange } from './fibreRange.js';
import { fromLattice } from './fromLattice.js';
import { invertPlacement } from './invertPlacement.js';
import type { PaintJob } from './paintJob.js';
import { scatterOnFace } from './scatterOnFace.js';
import { splatDash } from './splatDash.js';
import { splatFleck } from './splatFleck.js';

/** Ray sheets are not quite flat: their angle to the radius wanders by about 3 degrees. */
const unevenRad = 0.05;

/**
 * Paints rays. A ray is a sheet from pith to bark of thickness t and height h; a face that meets
 * it at angle delta shows it t / sin(delta) wide: a dark dash on a flatsawn face, a pale fleck on
 * a quartered one.
 */
export function paintRays(job: PaintJob): void {
  const { board, canvas, frame, lattice } = job;
  const rays = board.character.rays;
  if (rays === null) return;
  const toPx = invertPlacement(job.faceFromPx);
  const range = fibreRange(job, rays.heightMm[1]);
  const seed = job.textureSeed + 40009;
  const leaning = new StreakNoise(seed + 1, 45, 30);
  const cell = Math.max(1, 1 / Math.sqrt(rays.perMm2));
  scatterOnFace(range, rays.perMm2, 2 * cell, 2 * cell, seed, (along, across, random) => {
    const v = frame.faceVMm(along, across);
    const slope = Math.min(1, fromLattice(lattice, lattice.slope, along, v));
    const meeting = Math.acos(slope) + unevenRad * 2 * (random() - 0.5) * 1.7;
    const sine = Math.max(0.015, Math.abs(Math.sin(meeting)));
    if (random() > 0.12 + 0.88 * sine) return;
    const t = random();
    const heightMm = rays.heightMm[0] + (rays.heightMm[1] - rays.heightMm[0]) * t * t * t;
    const thickness = rays.thicknessMm[0] + (rays.thicknessMm[1] - rays.thicknessMm[0]) * random();
    const inView = Math.min(rays.reachMm * (0.2 + 0.8 * random()), thickness / sine);
    const widthMm = Math.min(inView, 1 + 3.5 * heightMm);
    const pale = Math.min(1, Math.max(0, (0.45 - sine) / 0.3));
    const density = rays.dashDensity + (rays.fleckDensity - rays.dashDensity) * pale;
    const strength = board.texture * density * (0.45 + 0.55 * random());
    const x0 = along - heightMm / 2;
    const x1 = along + heightMm / 2;
    const y0 = frame.faceVMm(x0, across);
    const y1 = frame.faceVMm(x1, across);
    const px0 = toPx.a * x0 + toPx.b * y0 + toPx.c;
    const py0 = toPx.d * x0 + toPx.e * y0 + toPx.f;
    const px1 = toPx.a * x1 + toPx.b * y1 + toPx.c;
    const py1 = toPx.d * x1 + toPx.e * y1 + toPx.f;
    const widthPx = widthMm * canvas.pxPerMm;
    if (widthPx < 3) {
      splatDash(canvas.tone, canvas.width, canvas.height, px0, py0, px1, py1, widthPx, strength);
      return;
    }
    const length = Math.hypot(px1 - px0, py1 - py0) || 1;
    splatFleck(canvas, {
      x: (px0 + px1) / 2,
      y: (py0 + py1) / 2,
      fibreX: (px1 - px0) / length,
      fibreY: (py1 - py0) / length,
      heightPx: length,
      widthPx,
      // Neighbouring rays lean alike, because the fibre they part leans there.
      lean: 1.3 * leaning.at(along, across) + 0.5 * (random() - 0.5),
      bend: 0.7 * (random() - 0.5),
      strength,
      seed: Math.floor(random() * 65536),
    });
  });
}
