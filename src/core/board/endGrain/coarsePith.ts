import { familiesDiffer } from './familiesDiffer.js';
import { acrossRings, familyAbout, type RingFamily } from './ringFamily.js';
import type { SlopeSamples } from './slopeSamples.js';

const cellMm = 4;
const bins = 45;
const binRad = Math.PI / bins;
/** Distances of tried piths from the picture's middle, in picture widths. */
const distances: readonly number[] = [
  0, 0.04, 0.08, 0.13, 0.19, 0.26, 0.34, 0.43, 0.54, 0.68, 0.85, 1.1, 1.45, 2, 3, 5, 10, 40,
];
const directions = 72;

/** Slope directions by cell of the picture: `share[cell * bins + bin]`. */
interface CellDirections {
  readonly xMm: readonly number[];
  readonly yMm: readonly number[];
  readonly share: Float64Array;
}

/**
 * Where the normals of most slopes meet, roughly: every tried pith is scored by how much of the
 * picture's slope points to it within about 8 degrees, less what chance would give.
 *
 * @param weight of each sample; 0 leaves it out.
 * @returns the few best families that differ, best first, each with its score (1 = all points
 *   to it exactly).
 */
export function coarsePiths(
  samples: SlopeSamples,
  weight: Float32Array,
  widthMm: number,
  heightMm: number,
): { readonly family: RingFamily; readonly score: number }[] {
  const cells = cellDirections(samples, weight, widthMm, heightMm);
  const [cx, cy] = [widthMm / 2, heightMm / 2];
  const tried = distances.flatMap((share) =>
    Array.from({ length: share === 0 ? 1 : directions }, (_, k) => {
      const angle = (2 * Math.PI * k) / directions;
      const far = share * widthMm;
      const pith = { xMm: cx + far * Math.cos(angle), yMm: cy + far * Math.sin(angle) };
      const family = familyAbout(pith, ...referenceFor(pith, cx, cy, widthMm));
      return { family, score: scoreOf(cells, family) };
    }),
  );
  tried.sort((a, b) => b.score - a.score);
  const best: typeof tried = [];
  for (const candidate of tried) {
    if (best.length === 6) break;
    if (best.every((b) => familiesDiffer(b.family, candidate.family, widthMm, heightMm, 0.1)))
      best.push(candidate);
  }
  return best;
}

/** The reference point c must not be the pith itself. */
export function referenceFor(
  pith: { readonly xMm: number; readonly yMm: number },
  cx: number,
  cy: number,
  widthMm: number,
): [number, number] {
  const near = Math.hypot(pith.xMm - cx, pith.yMm - cy) < 0.3 * widthMm;
  return near ? [cx + (pith.xMm > cx ? -0.7 : 0.7) * widthMm, cy] : [cx, cy];
}

function cellDirections(
  samples: SlopeSamples,
  weight: Float32Array,
  widthMm: number,
  heightMm: number,
): CellDirections {
  const columns = Math.max(1, Math.round(widthMm / cellMm));
  const rows = Math.max(1, Math.round(heightMm / cellMm));
  const share = new Float64Array(columns * rows * bins);
  let total = 0;
  for (let i = 0; i < samples.count; i++) {
    const column = Math.min(columns - 1, Math.floor((samples.xMm[i] / widthMm) * columns));
    const row = Math.min(rows - 1, Math.floor((samples.yMm[i] / heightMm) * rows));
    const turn = samples.angleRad[i] / Math.PI;
    const bin = Math.floor((turn - Math.floor(turn)) * bins) % bins;
    share[(row * columns + column) * bins + bin] += weight[i];
    total += weight[i];
  }
  for (let i = 0; i < share.length; i++) share[i] /= total || 1;
  const place = Array.from({ length: columns * rows }, (_, k) => k);
  return {
    xMm: place.map((k) => (((k % columns) + 0.5) * widthMm) / columns),
    yMm: place.map((k) => ((Math.floor(k / columns) + 0.5) * heightMm) / rows),
    share,
  };
}

/** exp(-(d / 8 deg)^2 / 2) per bin of difference, its mean over all directions taken off. */
const kernel = (() => {
  const raw = Array.from({ length: bins }, (_, k) => {
    const d = Math.min(k, bins - k) * binRad;
    return Math.exp(-0.5 * (d / 0.14) ** 2);
  });
  const usual = raw.reduce((a, b) => a + b, 0) / bins;
  return raw.map((v) => (v - usual) / (1 - usual));
})();

function scoreOf({ xMm, yMm, share }: CellDirections, family: RingFamily): number {
  let sum = 0;
  for (let cell = 0; cell < xMm.length; cell++) {
    const turn = towards(family, xMm[cell], yMm[cell]) / Math.PI;
    const at = Math.floor((turn - Math.floor(turn)) * bins) % bins;
    for (let k = -8; k <= 8; k++) {
      const bin = (at + k + bins) % bins;
      sum += share[cell * bins + bin] * kernel[Math.abs(k)];
    }
  }
  return sum;
}

const towards = (family: RingFamily, xMm: number, yMm: number) => {
  const [vx, vy] = acrossRings(family, xMm, yMm);
  return Math.atan2(vy, vx);
};
