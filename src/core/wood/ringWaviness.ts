import { gradientNoise3, type NoiseSample } from '../random/gradientNoise3.js';

/** Sizes of ring waviness, mm: hump length across and along the stem, standard deviation. */
const octaves = [
  { acrossMm: 70, alongMm: 400, rmsMm: 1.0 },
  { acrossMm: 21, alongMm: 140, rmsMm: 0.34 },
  { acrossMm: 7.5, alongMm: 46, rmsMm: 0.1 },
  { acrossMm: 2.7, alongMm: 17, rmsMm: 0.026 },
] as const;

/** Standard deviation of gradientNoise3 over space (checked by its test). */
const noiseRms = 0.27;

/**
 * Ring waviness of a stem: smooth noise, far longer along the stem than across.
 * Writes value (mm) and exact gradient in the stem frame (x, y across, z along).
 */
export function ringWaviness(
  seed: number,
  strength: number,
): (x: number, y: number, z: number, out: NoiseSample) => void {
  const part: NoiseSample = { value: 0, dx: 0, dy: 0, dz: 0 };
  return (x, y, z, out) => {
    out.value = out.dx = out.dy = out.dz = 0;
    if (strength === 0) return;
    for (let i = 0; i < octaves.length; i++) {
      const { acrossMm, alongMm, rmsMm } = octaves[i]!;
      gradientNoise3(x / acrossMm, y / acrossMm, z / alongMm, seed + i * 7919, part);
      const size = (strength * rmsMm) / noiseRms;
      out.value += size * part.value;
      out.dx += (size / acrossMm) * part.dx;
      out.dy += (size / acrossMm) * part.dy;
      out.dz += (size / alongMm) * part.dz;
    }
  };
}
