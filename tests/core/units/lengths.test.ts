import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../src/core/errors.js';
import { exactMm } from '../../../src/core/units/exactMm.js';
import { formatDecimalInches } from '../../../src/core/units/formatDecimalInches.js';
import { formatInches } from '../../../src/core/units/formatInches.js';
import { formatMm } from '../../../src/core/units/formatMm.js';
import { inchFraction } from '../../../src/core/units/inchFraction.js';
import { parseExactLengthMm } from '../../../src/core/units/parseExactLengthMm.js';
import { parseLengthMm } from '../../../src/core/units/parseLengthMm.js';
import { parsePointMm } from '../../../src/core/units/parsePointMm.js';
import { parsePointsMm } from '../../../src/core/units/parsePointsMm.js';
import { parseSizeMm } from '../../../src/core/units/parseSizeMm.js';

/** The inch is 25.4 mm by definition, so every expected value is plain arithmetic. */
describe('lengths', () => {
  it.each([
    ['190mm', 190],
    ['190 mm', 190],
    ['19cm', 190],
    ['.5m', 500],
    ['7.5in', 190.5],
    ['7 1/2"', 190.5],
    ['7-1/2in', 190.5],
    ['7½ in', 190.5],
    ['7 1⁄2″', 190.5],
    ['1/8in', 3.175],
    ['1/64 inch', 0.396875],
    ['2\' 3 1/2"', 698.5],
    ['2ft 3in', 685.8],
    ['2\'-3"', 685.8],
    ['3ft', 914.4],
    ['0mm', 0],
  ])('reads %s as %d mm', (text, mm) => {
    expect(parseLengthMm(text)).toBe(mm);
  });

  it.each(['7.5', '190', '1/8', '', ' ', '7in 3', '-3mm', '7,5mm', '1/0in', 'mm', '7 1/2 3in'])(
    "refuses '%s' with a hint",
    (text) => {
      const read = () => parseLengthMm(text);
      expect(read).toThrow(SeamgrainError);
      expect(read).toThrow(expect.objectContaining({ code: 'badLength' }));
      try {
        read();
      } catch (error) {
        expect((error as SeamgrainError).hint).not.toBe('');
      }
    },
  );

  it('keeps thirds exact', () => {
    expect(parseExactLengthMm('1/3in').mul(3).equals('25.4')).toBe(true);
    expect(exactMm(3.175).toFraction()).toBe('127/40');
  });

  it('allows a minus only where asked', () => {
    expect(parseLengthMm('-1/8in', 'any')).toBe(-3.175);
  });

  it('reads sizes and points', () => {
    expect(parseSizeMm('36in x 19 1/2in')).toEqual({ widthMm: 914.4, heightMm: 495.3 });
    expect(parseSizeMm('900mm×500mm')).toEqual({ widthMm: 900, heightMm: 500 });
    expect(parsePointMm('12in,3 1/2in')).toEqual({ xMm: 304.8, yMm: 88.9 });
    expect(parsePointsMm('7 1/2in,3in 20 1/4in,2ft 6in', 2)).toEqual([
      { xMm: 190.5, yMm: 76.2 },
      { xMm: 514.35, yMm: 762 },
    ]);
    for (const bad of ['900x500mm', '900mm', '900mmx500mmx20mm', '0mmx5mm']) {
      expect(() => parseSizeMm(bad)).toThrow(SeamgrainError);
    }
    for (const bad of ['12in', '12,3', '1in,2in 3in']) {
      expect(() => parsePointMm(bad)).toThrow(SeamgrainError);
    }
  });

  it('writes fractions as a rule has them', () => {
    expect(formatInches(365.125)).toBe('14 3/8 in');
    expect(formatInches(2.38125, 32)).toBe('3/32 in');
    expect(formatInches(50.8)).toBe('2 in');
    expect(formatInches(0)).toBe('0 in');
    expect(formatInches(-3.175)).toBe('-1/8 in');
    expect(formatDecimalInches(365.125)).toBe('14.375 in');
    expect(formatMm(190)).toBe('190 mm');
    expect(formatMm(100, 0)).toBe('100 mm');
    expect(formatMm(363.54)).toBe('363.5 mm');
    expect(formatMm(-0.01)).toBe('0 mm');
  });

  it('reads back what it wrote, within half a mark, and tells the error', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 4000, noNaN: true }),
        fc.constantFrom(16, 32, 64),
        (mm, denominator) => {
          const back = parseLengthMm(formatInches(mm, denominator));
          const { mm: rounded, errorMm } = inchFraction(mm, denominator);
          expect(back).toBeCloseTo(rounded, 9);
          expect(Math.abs(back - mm)).toBeLessThanOrEqual(25.4 / denominator / 2 + 1e-6);
          expect(back - mm).toBeCloseTo(errorMm, 5);
          expect(inchFraction(mm, denominator, 'down').mm).toBeLessThanOrEqual(mm + 1e-6);
          expect(inchFraction(mm, denominator, 'up').mm).toBeGreaterThanOrEqual(mm - 1e-6);
        },
      ),
    );
  });
});
