/** A number of pixels as written into SVG: two decimals at most, never in exponents. */
export function px(value: number): string {
  const fixed = value.toFixed(2).replace(/\.?0+$/, '');
  return fixed === '-0' ? '0' : fixed;
}
