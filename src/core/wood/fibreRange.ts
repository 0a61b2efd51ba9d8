import type { PaintJob } from './paintJob.js';

/** The part of the fibre frame that a piece's canvas shows, with a margin, mm. */
export function fibreRange(job: PaintJob, marginMm: number) {
  const { canvas, faceFromPx: m, plane, frame } = job;
  let x0 = Number.POSITIVE_INFINITY;
  let x1 = Number.NEGATIVE_INFINITY;
  let y0 = x0;
  let y1 = x1;
  // Fibre lines bend, so the range is taken from points along the canvas's border.
  for (let step = 0; step <= 16; step++) {
    const px = (canvas.width * step) / 16;
    for (const py of [0, canvas.height / 2, canvas.height]) {
      const u = m.a * px + m.b * py + m.c;
      const v = m.d * px + m.e * py + m.f;
      const x = plane.originMm[0] + u * plane.right[0] + v * plane.down[0];
      const across = frame.acrossMm(x, plane.originMm[1] + u * plane.right[1] + v * plane.down[1]);
      x0 = Math.min(x0, x);
      x1 = Math.max(x1, x);
      y0 = Math.min(y0, across);
      y1 = Math.max(y1, across);
    }
  }
  return { x0: x0 - marginMm, x1: x1 + marginMm, y0: y0 - 6, y1: y1 + 6 };
}
