import { gaussianBlur } from '../../filter/gaussianBlur.js';
import { createPlane } from '../../image/plane.js';
import { sampleBilinear } from '../../image/sampleBilinear.js';
import type { PanelPlanes } from '../../seam/seamWood.js';

/** Scales nearer than this count as one. */
const sameScale = 1.005;

/**
 * A board's planes at a coarser scale, so that boards photographed from different distances can
 * be laid edge to edge.
 *
 * @param pxPerMm not above the planes' own; a hardly different scale leaves them as they are.
 */
export function planesAtScale(planes: PanelPlanes, pxPerMm: number): PanelPlanes {
  const ratio = planes.pxPerMm / pxPerMm;
  if (ratio < sameScale) return planes;
  const source = planes.logLuminance;
  const smooth = createPlane(source.width, source.height);
  gaussianBlur(source, 0.5 * Math.sqrt(ratio * ratio - 1), smooth);
  const small = createPlane(Math.floor(source.width / ratio), Math.floor(source.height / ratio));
  for (let y = 0; y < small.height; y++) {
    for (let x = 0; x < small.width; x++) {
      small.data[y * small.width + x] = sampleBilinear(
        smooth,
        (x + 0.5) * ratio - 0.5,
        (y + 0.5) * ratio - 0.5,
      );
    }
  }
  return {
    pxPerMm,
    logLuminance: small,
    lab: { ...planes.lab, reduceBy: planes.lab.reduceBy / ratio },
  };
}
