const vulgarFractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/**
 * Rewrites what phones and word processors type (curly quotes, primes, ½, fraction slash, true
 * minus, no-break spaces) as plain ASCII, so that one small grammar reads every length.
 */
export function normaliseLengthText(text: string): string {
  return text
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${vulgarFractions[sign]}`)
    .replace(/⁄/g, '/')
    .replace(/[−–]/g, '-')
    .replace(/[″“”]/g, '"')
    .replace(/[′‘’]/g, "'")
    .replace(/''/g, '"')
    .replace(/[\s\u00a0\u2007\u202f]+/g, ' ')
    .trim()
    .toLowerCase();
}
