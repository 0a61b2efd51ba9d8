import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { boardP } from '../../../../src/core/seam/find/boardP.js';
import { discordSurprise } from '../../../../src/core/seam/find/discordSurprise.js';
import { lineP } from '../../../../src/core/seam/find/lineP.js';
import { pooledSurprise } from '../../../../src/core/seam/find/pooledSurprise.js';
import { poolP } from '../../../../src/core/seam/find/poolP.js';
import { tailScale } from '../../../../src/core/seam/find/tailScale.js';

/** Exponential strengths above a floor. */
function exponential(count: number, floor: number, tail: number, seed: number): number[] {
  const random = createRandom(seed);
  return Array.from({ length: count }, () => floor - tail * Math.log(1 - random.next()));
}

describe('tailScale', () => {
  it('is median and tail of an exponential law', () => {
    const law = tailScale(exponential(20_000, 3, 5, 1));
    expect(law.median).toBeCloseTo(3 + 5 * Math.LN2, 0);
    expect(law.tail / 5).toBeCloseTo(1, 1);
  });

  it('takes no board to be calmer than squares of a normal variable', () => {
    expect(tailScale(exponential(60, 3, 0.1, 3)).tail).toBe(2);
  });

  it('does not hear the strongest tenth, where seams would be', () => {
    const values = exponential(60, 3, 5, 2).sort((a, b) => a - b);
    const withSeams = values.map((v, k) => (k > 54 ? v + 1000 : v));
    expect(tailScale(withSeams)).toEqual(tailScale(values));
  });
});

describe('lineP', () => {
  it('is the law of the evidence itself where little is likely', () => {
    expect(lineP(12) / Math.exp(-12)).toBeCloseTo(1, 5);
  });
});

describe('boardP', () => {
  it('is a half at the median of the extreme value law, place + scale (ln(2)^-shape - 1) / shape', () => {
    // Coles 2001, An Introduction to Statistical Modeling of Extreme Values, eq. 3.4, at p = 1/2.
    const median = -0.52 + (1.58 * (Math.LN2 ** -0.135 - 1)) / 0.135;
    for (const tries of [1, 20, 70]) {
      expect(boardP(median + Math.log(tries), tries)).toBeCloseTo(0.5, 9);
    }
  });

  it('falls with the evidence, rises with the tries, and is never quite 0', () => {
    const evidence = fc.double({ min: 0, max: 80, noNaN: true });
    fc.assert(
      fc.property(evidence, fc.integer({ min: 1, max: 90 }), (value, tries) => {
        const p = boardP(value, tries);
        expect(p).toBeGreaterThan(0);
        expect(p).toBeLessThanOrEqual(1);
        expect(boardP(value + 1, tries)).toBeLessThanOrEqual(p);
        expect(boardP(value, tries + 1)).toBeGreaterThanOrEqual(p);
      }),
    );
  });
});

describe('pooledSurprise', () => {
  it('falls off at least as fast as exp(-s) where its channels do (union bound)', () => {
    const random = createRandom(5);
    const draw = () => -Math.log(1 - random.next());
    const drawn = Array.from({ length: 40_000 }, () => pooledSurprise(draw(), [draw(), draw()]));
    for (const s of [1, 3, 5]) {
      const share = drawn.filter((d) => d > s).length / drawn.length;
      // Four standard errors of a share of 40 000 draws.
      expect(share).toBeLessThan(Math.exp(-s) + 4 * Math.sqrt(Math.exp(-s) / drawn.length));
      // Overlapping readings make it careful, not deaf.
      expect(share).toBeGreaterThan(0.3 * Math.exp(-s));
    }
  });

  it('rises with every channel', () => {
    const s = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(s, s, s, (discord, ridge, colour) => {
        const pooled = pooledSurprise(discord, [ridge, colour]);
        expect(pooledSurprise(discord + 1, [ridge, colour])).toBeGreaterThanOrEqual(pooled);
        expect(pooledSurprise(discord, [ridge + 1, colour])).toBeGreaterThanOrEqual(pooled);
      }),
    );
  });
});

describe('discordSurprise', () => {
  it('pays for every tilt that was tried, and is never below 0', () => {
    expect(discordSurprise(4, -9, 5) - discordSurprise(4, -9, 50)).toBeCloseTo(Math.log(10), 9);
    expect(discordSurprise(-30, -20, 5)).toBe(0);
  });

  it('takes the reading that is less likely by chance', () => {
    const both = discordSurprise(4, 5, 5);
    expect(both).toBe(Math.max(discordSurprise(4, -99, 5), discordSurprise(-99, 5, 5)));
  });
});

describe('poolP', () => {
  const pool = Array.from({ length: 100 }, (_, k) => ({ value: k }));

  it('is the chance of the pool, over all tries', () => {
    expect(poolP(pool, 90, 1)).toBeCloseTo(0.1, 9);
    expect(poolP(pool, 90, 2)).toBeCloseTo(1 - 0.9 ** 2, 9);
    expect(poolP(pool, 100, 60)).toBe(0);
  });

  it('trusts no handful', () => {
    expect(poolP(pool.slice(0, 7), 1000, 1)).toBe(1);
  });
});
