import { invertPlacement } from './invertPlacement.js';
import type { PaintJob } from './paintJob.js';
import type { Placement } from './panelSpec.js';

/** From board (x, y) on a wide face to the piece's canvas px. */
export function pxFromBoard(job: PaintJob): Placement {
  const { plane } = job;
  // On a wide face `right` is +x and `down` is +y or -y.
  const flip = plane.down[1];
  const back = invertPlacement(job.faceFromPx);
  const u0 = -plane.originMm[0];
  const v0 = -flip * plane.originMm[1];
  return {
    a: back.a,
    b: back.b * flip,
    c: back.c + back.a * u0 + back.b * v0,
    d: back.d,
    e: back.e * flip,
    f: back.f + back.d * u0 + back.e * v0,
  };
}
