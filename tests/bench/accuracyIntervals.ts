import { createRandom } from '../../src/core/random/createRandom.js';

/** A figure with its 95 % interval. */
export interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

const untold: Interval = { value: Number.NaN, low: Number.NaN, high: Number.NaN };

/**
 * Share in per cent with Wilson's 95 % score interval (Wilson 1927, JASA 22: 209).
 *
 * @param hits of @param n tries that may be taken as independent.
 */
export function sharePercent(hits: number, n: number): Interval {
  if (n === 0) return untold;
  const z2 = 1.96 ** 2;
  const p = hits / n;
  const middle = (p + z2 / (2 * n)) / (1 + z2 / n);
  const half = (1.96 / (1 + z2 / n)) * Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n));
  return { value: 100 * p, low: 100 * Math.max(0, middle - half), high: 100 * (middle + half) };
}

/**
 * Any figure of grouped values with its bootstrap 95 % interval: whole groups (panels) are drawn
 * again, because cells and windows of one panel are no separate witnesses.
 */
export function bootstrap<T>(
  groups: readonly (readonly T[])[],
  figure: (values: readonly T[]) => number,
): Interval {
  const value = figure(groups.flat());
  if (Number.isNaN(value)) return untold;
  // One panel says nothing of how panels differ.
  if (groups.length < 2) return { ...untold, value };
  const random = createRandom(9);
  const draws = Array.from({ length: 400 }, () =>
    figure(groups.flatMap(() => groups[random.integer(groups.length)])),
  )
    .filter((v) => !Number.isNaN(v))
    .sort((a, b) => a - b);
  const at = (q: number) => draws[Math.min(draws.length - 1, Math.floor(q * draws.length))];
  return { value, low: at(0.025), high: at(0.975) };
}

/** Root mean square; NaN of nothing. */
export function rms(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((v) => v * v)));
}

/** Mean; NaN of nothing. */
export function mean(values: readonly number[]): number {
  return values.length > 0 ? values.reduce((a, b) => a + b, 0) / values.length : Number.NaN;
}

/** Per cent of the values for which the condition holds; NaN of nothing. */
export function percent(values: readonly boolean[]): number {
  return 100 * mean(values.map(Number));
}
