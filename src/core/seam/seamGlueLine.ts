import type { SeamResult } from '../results/scoreResult.js';
import type { LineMeasures } from './lineMeasures.js';

/**
 * Width and contrast of the glue line: mean over the seam of contrast times width, told apart by
 * the depth the lens left of it. Null when the boards' own lines do as much (twice their rms).
 *
 * Contrast is (wood - line) / wood in linear light, positive for a dark line.
 */
export function seamGlueLine(
  seam: LineMeasures,
  own: readonly LineMeasures[],
): SeamResult['glueLine'] {
  const areaMm = mean(seam.windows.map((w) => w.ridge.areaMm));
  const peak = mean(seam.windows.map((w) => w.ridge.peak));
  const usual = own.map((line) => mean(line.windows.map((w) => w.ridge.areaMm)));
  const rms = Math.sqrt(mean(usual.map((a) => a * a)));
  if (usual.length > 0 && Math.abs(areaMm) < 2 * rms) return { widthMm: null, contrast: null };
  if (Math.abs(areaMm) < 1e-4 || areaMm * peak <= 0) return { widthMm: 0, contrast: 0 };
  const widthMm = Math.abs(areaMm / peak);
  return { widthMm, contrast: 1 - Math.exp(peak) };
}

const mean = (values: readonly number[]) =>
  values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);
