import Fraction from 'fraction.js';

/**
 * A length in millimetres as an exact rational.
 * Takes the number as the decimal that it prints as (3.175 is 127/40, not the nearest double),
 * so sums of maker's fractions (1/64 in = 0.396875 mm) close exactly.
 * @param mm length, mm, any sign, at most nine decimals are kept
 */
export function exactMm(mm: number): Fraction {
  return new Fraction(mm.toFixed(9));
}
