import type { PaintJob } from './paintJob.js';

/** The part of the fibre frame that a piece's canvas shows, with a margin, mm. */
export function fibreRange(job: PaintJob, marginMm: number) {
  const { canvas, faceFromPx: m, frame } = job;
  let x0 = Number.POSITIVE_INFINITY;
  let x1 = Number.NEGATIVE_INFINITY;
  let y0 = x0;
  let y1 = x1;
  // Fibre lines bend, so the range is taken from points along the canvas's border.
  for (let step = 0; step <= 32; step++) {
    const px = (canvas.width * step) / 32;
    for (const py of [0, canvas.height / 2, canvas.height]) {
      const u = m.a * px + m.b * py + m.c;
      const across = frame.acrossMm(u, m.d * px + m.e * py + m.f);
      x0 = Math.min(x0, u);
      x1 = Math.max(x1, u);
      y0 = Math.min(y0, across);
      y1 = Math.max(y1, across);
    }
  }
  return { x0: x0 - marginMm, x1: x1 + marginMm, y0: y0 - 4, y1: y1 + 4 };
}
