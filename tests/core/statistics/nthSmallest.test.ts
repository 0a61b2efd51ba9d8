import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nthSmallest } from '../../../src/core/statistics/nthSmallest.js';

describe('nthSmallest', () => {
  it('is what sorting would put there, equal values or not', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 1, maxLength: 200 }),
        fc.nat(),
        (values, k) => {
          const n = k % values.length;
          const sorted = Float64Array.from(values).sort();
          expect(nthSmallest(Float64Array.from(values), n)).toBe(sorted[n]);
        },
      ),
    );
  });

  it('beyond the end is the largest', () => {
    expect(nthSmallest(Float32Array.of(3, 1, 2), 9)).toBe(3);
  });
});
