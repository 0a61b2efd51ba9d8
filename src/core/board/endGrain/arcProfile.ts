import type { Plane } from '../../image/plane.js';
import { depthToPithMm, type RingFamily } from './ringFamily.js';

/** Mean of a picture along the arcs of a family, by depth towards the centre. */
export interface ArcProfile {
  readonly family: RingFamily;
  readonly fromMm: number;
  readonly stepMm: number;
  readonly mean: Float64Array;
  readonly count: Float64Array;
}

/** Averages along whole arcs: what runs with the arcs stays, all else averages out. */
export function arcProfile(
  plane: Plane,
  pxPerMm: number,
  family: RingFamily,
  stepMm: number,
): ArcProfile {
  const { width, height, data } = plane;
  const half = Math.hypot(width, height) / pxPerMm;
  const depthAt = depthToPithMm(family);
  const middle = depthAt(width / pxPerMm / 2, height / pxPerMm / 2);
  const fromMm = middle - half;
  const bins = Math.ceil((2 * half) / stepMm) + 2;
  const mean = new Float64Array(bins);
  const count = new Float64Array(bins);
  for (let i = 0; i < width * height; i++) {
    const x = ((i % width) + 0.5) / pxPerMm;
    const y = (Math.floor(i / width) + 0.5) / pxPerMm;
    const bin = Math.floor((depthAt(x, y) - fromMm) / stepMm);
    if (bin < 0 || bin >= bins) continue;
    mean[bin] += data[i];
    count[bin]++;
  }
  for (let i = 0; i < bins; i++) mean[i] = count[i] > 0 ? mean[i] / count[i] : 0;
  return { family, fromMm, stepMm, mean, count };
}

/** The picture without what runs along the arcs. */
export function withoutArcs(plane: Plane, pxPerMm: number, profile: ArcProfile): Plane {
  const { width, height, data } = plane;
  const { family, fromMm, stepMm, mean } = profile;
  const out = new Float32Array(data.length);
  const depthAt = depthToPithMm(family);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const depth = depthAt((x + 0.5) / pxPerMm, (y + 0.5) / pxPerMm);
      const at = (depth - fromMm) / stepMm - 0.5;
      const i = Math.max(0, Math.min(mean.length - 2, Math.floor(at)));
      const along = mean[i] + Math.max(0, Math.min(1, at - i)) * (mean[i + 1] - mean[i]);
      out[y * width + x] = data[y * width + x] - along;
    }
  }
  return { width, height, data: out };
}
