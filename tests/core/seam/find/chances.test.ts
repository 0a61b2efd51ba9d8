import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { familyP } from '../../../../src/core/seam/find/familyP.js';
import { tailScale } from '../../../../src/core/seam/find/tailScale.js';

/** Exponential strengths above a floor. */
function exponential(count: number, floor: number, tail: number, seed: number): number[] {
  const random = createRandom(seed);
  return Array.from({ length: count }, () => floor - tail * Math.log(1 - random.next()));
}

describe('tailScale', () => {
  it('is median and tail of an exponential law', () => {
    const law = tailScale(exponential(20_000, 3, 0.5, 1));
    expect(law.median).toBeCloseTo(3 + 0.5 * Math.LN2, 1);
    expect(law.tail / 0.5).toBeCloseTo(1, 1);
  });

  it('does not hear the strongest tenth, where seams would be', () => {
    const values = exponential(60, 3, 0.5, 2).sort((a, b) => a - b);
    const withSeams = values.map((v, k) => (k > 54 ? v + 1000 : v));
    expect(tailScale(withSeams)).toEqual(tailScale(values));
  });
});

describe('familyP', () => {
  it('of one try is the chance that five surprises add up to so much', () => {
    const random = createRandom(5);
    const drawn = Array.from({ length: 40_000 }, () =>
      [1, 2, 3, 4, 5].reduce((sum) => sum - Math.log(1 - random.next()), 0),
    );
    for (const evidence of [3, 6, 9, 12]) {
      const share = drawn.filter((s) => s > evidence).length / drawn.length;
      const p = familyP(evidence, 1, 5);
      // Four standard errors of a share of 40 000 draws.
      expect(Math.abs(p - share)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / drawn.length));
    }
  });

  it('falls with the evidence, rises with the tries, and is never quite 0', () => {
    const evidence = fc.double({ min: 0, max: 80, noNaN: true });
    fc.assert(
      fc.property(evidence, fc.integer({ min: 1, max: 90 }), (value, tries) => {
        const p = familyP(value, tries, 5);
        expect(p).toBeGreaterThan(0);
        expect(p).toBeLessThanOrEqual(1);
        expect(familyP(value + 1, tries, 5)).toBeLessThanOrEqual(p);
        expect(familyP(value, tries + 1, 5)).toBeGreaterThanOrEqual(p);
      }),
    );
  });
});
