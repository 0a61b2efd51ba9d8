import { averageDown } from '../filter/averageDown.js';
import { gaussianBlur } from '../filter/gaussianBlur.js';
import { gaussianGradient } from '../filter/gaussianGradient.js';
import { blockTensor } from '../grain/blockTensor.js';
import { capEnergy } from '../grain/capEnergy.js';
import type { Plane } from '../image/plane.js';

/** Direction across the rings at one place of an end-grain photo; it points at the pith. */
export interface RingNormal {
  readonly xMm: number;
  readonly yMm: number;
  readonly nx: number;
  readonly ny: number;
  readonly weight: number;
}

const workPxPerMm = 5;
const slopeMm = 0.35;
const windowMm = 1.5;
/** Less agreement than this within a window is no ring. */
const leastCoherence = 0.2;

/** Ring normals in blocks of about a millimetre, weighted by how well their window agrees. */
export function ringNormals(logLuminance: Plane, pxPerMm: number): RingNormal[] {
  const factor = Math.max(1, Math.round(pxPerMm / workPxPerMm));
  const source = averageDown(logLuminance, factor);
  const scale = pxPerMm / factor;
  const gradient = gaussianGradient(source, Math.max(0.8, slopeMm * scale));
  const blocks = capEnergy(blockTensor(gradient, Math.max(1, Math.round(scale)), scale));
  const { width, height, stepMm } = blocks;
  const blur = (data: Float32Array) =>
    gaussianBlur({ width, height, data }, windowMm / stepMm).data;
  const [xx, xy, yy] = [blur(blocks.jxx), blur(blocks.jxy), blur(blocks.jyy)];
  const out: RingNormal[] = [];
  for (let j = 1; j < height - 1; j++) {
    for (let i = 1; i < width - 1; i++) {
      const k = j * width + i;
      const coherence = Math.hypot(xx[k] - yy[k], 2 * xy[k]) / (xx[k] + yy[k] + 1e-12);
      if (coherence < leastCoherence) continue;
      const angle = 0.5 * Math.atan2(2 * xy[k], xx[k] - yy[k]);
      out.push({
        xMm: (i + 0.5) * stepMm,
        yMm: (j + 0.5) * stepMm,
        nx: Math.cos(angle),
        ny: Math.sin(angle),
        weight: coherence * coherence,
      });
    }
  }
  return out;
}
