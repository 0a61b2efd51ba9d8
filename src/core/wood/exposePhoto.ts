import type { Plane } from '../image/plane.js';
import { createRandom } from '../random/createRandom.js';
import type { Camera } from './camera.js';

/**
 * Light and sensor, in linear light: uneven light, vignette, exposure, white balance, then shot
 * and read noise. `planes` are changed in place.
 *
 *     sigma^2 = light / fullWell + readNoise^2
 */
export function exposePhoto(planes: readonly [Plane, Plane, Plane], camera: Camera): void {
  const { widthPx, heightPx, lightAcross = 0, lightDown = 0, vignette = 0, exposure = 1 } = camera;
  const balance = camera.whiteBalance ?? [1, 1, 1];
  const shot = camera.fullWell === undefined ? 0 : 1 / camera.fullWell;
  const read2 = (camera.readNoise ?? 0) ** 2;
  const noisy = shot > 0 || read2 > 0;
  const random = createRandom((camera.seed ?? 1) ^ 0x50075);
  // A table of normal deviates, entered at random for every pixel: far faster than fresh ones.
  const deviates = Float32Array.from({ length: noisy ? 65536 : 1 }, () => random.normal());
  let state = random.integer(2 ** 31) | 1;
  const draw = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return deviates[(state >>> 7) & 65535]!;
  };
  for (let y = 0; y < heightPx; y++) {
    const t = (y + 0.5) / heightPx - 0.5;
    for (let x = 0; x < widthPx; x++) {
      const s = (x + 0.5) / widthPx - 0.5;
      const lit =
        exposure * (1 + lightAcross * s + lightDown * t) * (1 - 2 * vignette * (s * s + t * t));
      const at = y * widthPx + x;
      for (let channel = 0; channel < 3; channel++) {
        const data = planes[channel]!.data;
        const light = data[at]! * lit * balance[channel]!;
        data[at] = noisy ? light + Math.sqrt(shot * Math.max(0, light) + read2) * draw() : light;
      }
    }
  }
}
