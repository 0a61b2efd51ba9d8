import { expect } from 'vitest';

/**
 * Expects two documents to be the same, numbers within `tolerance` (absolute, or relative above 1).
 */
export function expectSameNumbers(
  found: unknown,
  wanted: unknown,
  tolerance = 1e-6,
  path = 'answer',
): void {
  if (typeof wanted === 'number' && typeof found === 'number') {
    const apart = Math.abs(found - wanted) / Math.max(1, Math.abs(wanted));
    expect(apart, `${path}: ${found} against ${wanted}`).toBeLessThanOrEqual(tolerance);
    return;
  }
  if (typeof wanted !== 'object' || wanted === null) {
    expect(found, path).toEqual(wanted);
    return;
  }
  expect(Object.keys(found as object).sort(), path).toEqual(Object.keys(wanted).sort());
  for (const [key, value] of Object.entries(wanted)) {
    const other = (found as Record<string, unknown>)[key];
    expectSameNumbers(other, value, tolerance, `${path}.${key}`);
  }
}
