import { StreakNoise } from '../random/streakNoise.js';
import { invertPlacement } from './invertPlacement.js';
import type { PaintJob } from './paintJob.js';

/** A branch is cut slightly aslant: its outline is this much longer along the board. */
const aslant = 1.2;

/** Paints each knot: dark branch wood with its own rings, a darker rim, a stained surround. */
export function paintKnots(job: PaintJob): void {
  const { board, canvas, faceFromPx: m, plane } = job;
  const toPx = invertPlacement(m);
  board.knots.forEach((knot, index) => {
    const radius = knot.radiusMm;
    const wobble = new StreakNoise(job.textureSeed + index, 0.9, 1);
    const reach = 3 * radius * canvas.pxPerMm * aslant;
    const knotU = knot.xMm - plane.originMm[0];
    const knotV = (knot.yMm - plane.originMm[1]) * plane.down[1];
    const cx = toPx.a * knotU + toPx.b * knotV + toPx.c;
    const cy = toPx.d * knotU + toPx.e * knotV + toPx.f;
    const right = Math.min(canvas.width - 1, Math.ceil(cx + reach));
    const bottom = Math.min(canvas.height - 1, Math.ceil(cy + reach));
    for (let row = Math.max(0, Math.floor(cy - reach)); row <= bottom; row++) {
      for (let column = Math.max(0, Math.floor(cx - reach)); column <= right; column++) {
        const u = m.a * (column + 0.5) + m.b * (row + 0.5) + m.c;
        const v = m.d * (column + 0.5) + m.e * (row + 0.5) + m.f;
        const dx = (u - knotU) / aslant;
        const dy = v - knotV;
        const turn = Math.atan2(dy, dx);
        const out =
          Math.hypot(dx, dy) /
          (radius * (1 + 0.09 * wobble.at(2 * Math.cos(turn), 3 + Math.sin(turn))));
        const k = row * canvas.width + column;
        const rim = Math.exp(-(((out - 1) / 0.09) ** 2));
        const halo = out > 1 ? 0.14 * Math.exp(-(out - 1) / 0.45) : 0.14;
        const inside = Math.min(1, Math.max(0, (1 - out) * radius * canvas.pxPerMm + 0.5));
        const rings = 0.07 * Math.sin(7.5 * out * radius + 2 * wobble.at(out * 3, 0.5));
        const branch = 0.42 + rings + 0.12 * (1 - out);
        canvas.tone[k]! += inside * (branch - canvas.tone[k]!) + halo + 0.5 * rim;
        canvas.pores[k]! *= 1 - inside;
      }
    }
  });
}
