import { linearLight } from '../colour/linearLight.js';
import { linearLightTable } from '../colour/linearLightTable.js';
import { createPlane, type Plane } from '../image/plane.js';
import type { RgbImage } from '../image/rgbImage.js';
import { StreakNoise } from '../random/streakNoise.js';
import type { Camera } from './camera.js';
import { invertHomography, quadHomography } from './quadHomography.js';

/**
 * The panel's picture laid into the frame in linear light, the bench around it.
 *
 * Each photo pixel averages n x n bilinear samples, n growing with how much the panel is
 * reduced, so that nothing is lost between samples; pixels on the panel's edge mix with the bench.
 *
 * @returns red, green and blue planes of the photo's size, linear light.
 */
export function warpOntoBench(image: RgbImage, camera: Camera): readonly [Plane, Plane, Plane] {
  const { widthPx, heightPx, cornersPx } = camera;
  const light = linearLightTable();
  const planes = [0, 1, 2].map(() => createPlane(widthPx, heightPx)) as [Plane, Plane, Plane];
  const [red, green, blue] = planes.map((plane) => plane.data) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  const bench = (camera.background ?? [118, 110, 100]).map(linearLight) as [number, number, number];
  const seed = camera.seed ?? 1;
  const [coarse, fine] = [new StreakNoise(seed, 90, 60), new StreakNoise(seed + 1, 7, 5)];
  const m = invertHomography(quadHomography(cornersPx));
  const n = samplesPerSide(image, camera);
  const share = 1 / (n * n);
  const { width, height, data } = image;
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      let [r, g, b, inside] = [0, 0, 0, 0];
      for (let k = 0; k < n * n; k++) {
        const px = x + ((k % n) + 0.5) / n;
        const py = y + (Math.floor(k / n) + 0.5) / n;
        const w = m[6] * px + m[7] * py + m[8];
        const s = (m[0] * px + m[1] * py + m[2]) / w;
        const t = (m[3] * px + m[4] * py + m[5]) / w;
        if (!(s >= 0 && s <= 1 && t >= 0 && t <= 1)) continue;
        inside++;
        const u = Math.min(width - 1, Math.max(0, s * width - 0.5));
        const v = Math.min(height - 1, Math.max(0, t * height - 0.5));
        const i = Math.min(width - 2, u | 0);
        const j = Math.min(height - 2, v | 0);
        const fu = u - i;
        const fv = v - j;
        const upper = 3 * (j * width + i);
        const lower = upper + 3 * width;
        const w00 = (1 - fu) * (1 - fv);
        const w10 = fu * (1 - fv);
        const w01 = (1 - fu) * fv;
        const w11 = fu * fv;
        r +=
          w00 * light[data[upper]!]! +
          w10 * light[data[upper + 3]!]! +
          w01 * light[data[lower]!]! +
          w11 * light[data[lower + 3]!]!;
        g +=
          w00 * light[data[upper + 1]!]! +
          w10 * light[data[upper + 4]!]! +
          w01 * light[data[lower + 1]!]! +
          w11 * light[data[lower + 4]!]!;
        b +=
          w00 * light[data[upper + 2]!]! +
          w10 * light[data[upper + 5]!]! +
          w01 * light[data[lower + 2]!]! +
          w11 * light[data[lower + 5]!]!;
      }
      const at = y * widthPx + x;
      const rest = 1 - inside * share;
      const shade = rest === 0 ? 0 : rest * (1 + 0.12 * coarse.at(x, y) + 0.1 * fine.at(x, y));
      red[at] = r * share + shade * bench[0];
      green[at] = g * share + shade * bench[1];
      blue[at] = b * share + shade * bench[2];
    }
  }
  return planes;
}

/** Samples per photo pixel and side: at least 2, more where the panel is much reduced. */
function samplesPerSide(image: RgbImage, { cornersPx }: Camera): number {
  const side = (i: number, j: number) =>
    Math.hypot(cornersPx[i]!.x - cornersPx[j]!.x, cornersPx[i]!.y - cornersPx[j]!.y);
  const across = image.width / Math.min(side(0, 1), side(3, 2));
  const down = image.height / Math.min(side(0, 3), side(1, 2));
  return Math.min(6, Math.max(2, Math.ceil(1.3 * Math.max(across, down))));
}
