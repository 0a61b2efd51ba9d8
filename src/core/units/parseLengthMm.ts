import { parseExactLengthMm } from './parseExactLengthMm.js';

/**
 * Reads a length with its unit, as on the command line.
 * `190mm`, `19cm`, `7.5in`, `7 1/2"`, `7-1/2in`, `1/8in`, `2' 3 1/2"`.
 * @param text what was typed; a bare number is refused
 * @param sign `"notNegative"` (default) refuses a minus; `"any"` allows it
 * @returns millimetres
 * @throws SeamgrainError `badLength`, with a hint
 */
export function parseLengthMm(text: string, sign: 'notNegative' | 'any' = 'notNegative'): number {
  return parseExactLengthMm(text, sign).valueOf();
}
