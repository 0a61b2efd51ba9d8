import { inchFraction } from './inchFraction.js';

/**
 * Writes a length as a maker reads it off a rule: `14 3/8 in`, `3/32 in`, `2 in`.
 * `inchFraction` gives the rounding error as well.
 * @param mm length, mm
 * @param denominator marks per inch, 16 (default), 32, 64
 */
export function formatInches(mm: number, denominator = 16): string {
  const { whole, numerator, denominator: below, negative } = inchFraction(mm, denominator);
  const fraction = numerator === 0 ? '' : `${numerator}/${below}`;
  const amount = whole === 0 && fraction ? fraction : [whole, fraction].filter(Boolean).join(' ');
  return `${negative ? '-' : ''}${amount || '0'} in`;
}
