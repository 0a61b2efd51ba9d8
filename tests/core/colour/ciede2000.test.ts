import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ciede2000 } from '../../../src/core/colour/ciede2000.js';
import type { Lab } from '../../../src/core/colour/lab.js';
import sharma from '../../reference/sharma2005.json' with { type: 'json' };

const channel = fc.double({ min: -100, max: 100, noNaN: true });
const lab: fc.Arbitrary<Lab> = fc.tuple(
  fc.double({ min: 0, max: 100, noNaN: true }),
  channel,
  channel,
);

describe('ciede2000', () => {
  // Published: Sharma, Wu, Dalal 2005, Table 1 (file and provenance in tests/reference).
  it.each(sharma.pairs)('pair %#: Lab(%d, %d, %d) to Lab(%d, %d, %d) is %d', (...row) => {
    const [l1, a1, b1, l2, a2, b2, expected] = row as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    expect(Math.abs(ciede2000([l1, a1, b1], [l2, a2, b2]) - expected)).toBeLessThan(1e-4);
  });

  it('has all 34 pairs', () => expect(sharma.pairs).toHaveLength(34));

  // Second implementation: colorjs.io.
  it('agrees with colorjs.io on random pairs', () => {
    fc.assert(
      fc.property(lab, lab, (first, second) => {
        const reference = new Color('lab', [...first]).deltaE(
          new Color('lab', [...second]),
          '2000',
        );
        expect(Math.abs(ciede2000(first, second) - reference)).toBeLessThan(1e-8);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('is zero for one colour and the same both ways', () => {
    fc.assert(
      fc.property(lab, lab, (first, second) => {
        expect(ciede2000(first, first)).toBe(0);
        expect(ciede2000(first, second)).toBeCloseTo(ciede2000(second, first), 8);
      }),
      { seed: 2 },
    );
  });
});
