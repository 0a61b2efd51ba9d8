import type { RandomSource } from '../random/randomSource.js';

/** A smooth random wander along the stem and its exact slope. */
export interface PithWander {
  at(stationMm: number): number;
  slopeAt(stationMm: number): number;
}

/** Wavelengths and standard deviations of a stem's crookedness, mm. */
const waves = [
  { lengthMm: 760, rmsMm: 2.2 },
  { lengthMm: 330, rmsMm: 0.8 },
  { lengthMm: 145, rmsMm: 0.2 },
] as const;

/** Draws one component of the pith's path: a sum of three sine waves of random phase. */
export function pithWander(random: RandomSource, strength: number): PithWander {
  const terms = waves.map(({ lengthMm, rmsMm }) => ({
    rate: (2 * Math.PI) / (lengthMm * random.uniform(0.85, 1.18)),
    size: strength * rmsMm * random.normal(),
    phase: random.uniform(0, 2 * Math.PI),
  }));
  return {
    at: (z) => terms.reduce((sum, t) => sum + t.size * Math.sin(t.rate * z + t.phase), 0),
    slopeAt: (z) =>
      terms.reduce((sum, t) => sum + t.size * t.rate * Math.cos(t.rate * z + t.phase), 0),
  };
}
