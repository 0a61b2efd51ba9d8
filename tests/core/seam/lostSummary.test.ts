import { expect, it } from 'vitest';
import { lostSummary, partsOfLine } from '../../../src/core/seam/lostSummary.js';

const range = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
const gs = range(-0.5, 10, 0.125);
const us = range(-15, 15, 0.5);

/** Normal errors: every part says g + w t = lost + wedge t, give or take partSd, and u = slide. */
function normalLogs(lost: number, wedge: number, slide: number, partSd: number): Float64Array {
  return Float64Array.from({ length: gs.length * us.length * partsOfLine }, (_, i) => {
    const t = ((i % partsOfLine) + 0.5) / partsOfLine - 0.5;
    const g = gs[Math.floor(i / (partsOfLine * us.length))]!;
    const u = us[Math.floor(i / partsOfLine) % us.length]!;
    return -0.5 * ((g - lost - wedge * t) / partSd) ** 2 - 0.5 * ((u - slide) / 0.8) ** 2;
  });
}

it('is the regression line through the parts where their errors are normal', () => {
  // Least squares: sd of the mean = sd / sqrt(n), of the slope = sd / sqrt(sum t^2), t of 8 parts.
  const partSd = 0.2;
  const { lostMm, lostSeMm, wedgeMm, wedgeSeMm } = lostSummary(gs, us, normalLogs(3, 1, 0, partSd));
  const squares = range(0, 7, 1).reduce((sum, k) => sum + ((k + 0.5) / 8 - 0.5) ** 2, 0);
  expect(lostMm).toBeCloseTo(3, 1);
  expect(lostSeMm).toBeCloseTo(partSd / Math.sqrt(8), 1);
  // The prior draws the wedge a little towards none.
  expect(Math.abs(wedgeMm - 1)).toBeLessThan(0.15);
  expect(Math.abs(wedgeSeMm - partSd / Math.sqrt(squares))).toBeLessThan(0.06);
});

it('knows the best pair without a wedge', () => {
  const { best, bestUnslidMm } = lostSummary(gs, us, normalLogs(3, 0, 2, 0.2));
  expect(best).toEqual({ lostMm: 3, slideMm: 2 });
  expect(bestUnslidMm).toBe(3);
});

it('says the wedge as little as its prior where nothing tells it', () => {
  const nothing = new Float64Array(gs.length * us.length * partsOfLine);
  const { wedgeMm, wedgeSeMm } = lostSummary(gs, us, nothing);
  expect(wedgeMm).toBeCloseTo(0, 6);
  expect(wedgeSeMm).toBeGreaterThan(0.3);
});
