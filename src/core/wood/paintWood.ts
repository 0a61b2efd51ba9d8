import { StreakNoise } from '../random/streakNoise.js';
import { latticeRow } from './latticeRow.js';
import type { PaintJob } from './paintJob.js';
import { meanRingDensity } from './ringProfile.js';

/** Streak sizes of the fibre, mm along and across, and their share of the fibre's density. */
const streaks = [
  { alongMm: 70, acrossMm: 0.8, share: 0.55 },
  { alongMm: 28, acrossMm: 0.33, share: 0.75 },
  { alongMm: 9, acrossMm: 0.17, share: 1 },
] as const;

/**
 * Paints rings, fibre and colour drift of one piece into its canvas's tone.
 *
 * The ring density is averaged over the pixel's own footprint in age (slope x pixel size), so
 * fine rings fade instead of making false patterns.
 */
export function paintWood(job: PaintJob): void {
  const { board, profile, canvas, faceFromPx } = job;
  const { character, contrast, texture } = board;
  const pxMm = 1 / canvas.pxPerMm;
  const noises = streaks.map(
    (s, i) => new StreakNoise(job.textureSeed + 101 * i, s.alongMm, s.acrossMm),
  );
  const [broad, middle, fine] = noises as [StreakNoise, StreakNoise, StreakNoise];
  const ringSize = contrast * character.ringDensity;
  const fibre = texture * character.fibreDensity;
  // Streaks finer than the pixel average out.
  const fineShare = streaks[2].share * Math.min(1, streaks[2].acrossMm / pxMm) ** 0.5;
  const serration = texture * character.serrationMm;
  const { a, b, c, d, e, f } = faceFromPx;
  const readRow = latticeRow(job);
  for (let row = 0; row < canvas.height; row++) {
    const { ageMm, slope, drift, shift } = readRow(row);
    const py = row + 0.5;
    for (let column = 0; column < canvas.width; column++) {
      const px = column + 0.5;
      const u = a * px + b * py + c;
      const v = d * px + e * py + f;
      const across = v - shift[column]!;
      const s1 = broad.at(u, across);
      const s2 = middle.at(u, across);
      const s3 = fine.at(u, across);
      const age = ageMm[column]! + serration * (0.5 * s1 + 0.7 * s2 + 0.4 * s3);
      canvas.tone[row * canvas.width + column] =
        ringSize * meanRingDensity(profile, age, slope[column]! * pxMm) +
        fibre * (streaks[0].share * s1 + streaks[1].share * s2 + fineShare * s3) +
        drift[column]!;
    }
  }
}
