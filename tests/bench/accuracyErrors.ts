import type { FaceErrors } from './accuracyGrain.js';
import type { PlacedSeam } from './accuracyPlaced.js';
import type { UniformSeries } from './uniformPlot.js';

/** One cell of a face in so many is enough for a curve. */
const everyCell = 7;

/**
 * Chance of an error as large as each measured one or larger, were it normal with its stated
 * standard error: uniform where the error bars are honest, bunched near 0 where they are too short.
 */
export function errorSeries(
  faces: readonly FaceErrors[],
  placed: readonly PlacedSeam[],
): UniformSeries[] {
  const grain = (['flatsawn', 'rift', 'quartered'] as const).map((cut) => ({
    name: `grain, ${cut}`,
    p: faces
      .filter((face) => face.cut === cut)
      .flatMap(({ cells }) => cells.filter((_, i) => i % everyCell === 0))
      .filter((cell) => Number.isFinite(cell.errorDeg) && cell.seDeg > 0)
      .map((cell) => twoSided(cell.errorDeg / cell.seDeg)),
  }));
  const lost = placed.flatMap(({ lostMm, result: { lost } }) =>
    lost.mm === null || !lost.seMm ? [] : [twoSided((lost.mm - lostMm) / lost.seMm)],
  );
  const slide = placed.flatMap(({ slideMm, result: { lost } }) =>
    lost.slideMm === null || !lost.slideSeMm
      ? []
      : [twoSided((lost.slideMm - slideMm) / lost.slideSeMm)],
  );
  const series = [...grain, { name: 'width lost', p: lost }, { name: 'slide', p: slide }];
  return series.filter(({ p }) => p.length > 0);
}

/**
 * P(|Z| > |z|) of a standard normal variable, by Simpson's rule on its density; good to 1e-6.
 */
function twoSided(z: number): number {
  const end = Math.min(6, Math.abs(z));
  const steps = 200;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.exp(-0.5 * ((end * i) / steps) ** 2);
  }
  return Math.max(0, 1 - ((2 / Math.sqrt(2 * Math.PI)) * (sum * (end / steps))) / 3);
}
