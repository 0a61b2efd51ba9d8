import { type PointMm, parsePointsMm } from './parsePointsMm.js';

/**
 * Reads one place on the panel, `x,y`, each with its unit: `12in,3 1/2in`.
 * @throws SeamgrainError `badLength`
 */
export function parsePointMm(text: string): PointMm {
  return parsePointsMm(text, 1)[0]!;
}
