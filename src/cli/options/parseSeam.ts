import { SeamgrainError } from '../../core/errors.js';
import type { LineMm } from '../../core/results/scoreResult.js';
import { parseLengthMm } from '../../core/units/parseLengthMm.js';
import { parsePointsMm } from '../../core/units/parsePointsMm.js';

/** A seam placed by hand; where it runs across the whole panel, the panel says how far. */
export type SeamSpec =
  | { readonly kind: 'along'; readonly yMm: number }
  | { readonly kind: 'across'; readonly xMm: number }
  | { readonly kind: 'line'; readonly line: LineMm };

/** Reads one `--seam`: `y=LENGTH`, `x=LENGTH`, or `x1,y1 x2,y2` with units; adds it to the earlier ones. */
export function parseSeam(text: string, earlier: readonly SeamSpec[] = []): readonly SeamSpec[] {
  return [...earlier, readSeam(text)];
}

function readSeam(text: string): SeamSpec {
  const whole = /^\s*([xy])\s*=\s*(.+)$/i.exec(text);
  if (whole) {
    const mm = parseLengthMm(whole[2]);
    return whole[1].toLowerCase() === 'y'
      ? { kind: 'along', yMm: mm }
      : { kind: 'across', xMm: mm };
  }
  if (!text.includes(',')) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' is not a seam.`,
      'Write "y=7 1/2in" for a rip, "x=10in" for a crosscut, or its two ends "0in,7in 36in,7 1/8in".',
    );
  }
  const [from, to] = parsePointsMm(text, 2);
  return { kind: 'line', line: { x1Mm: from.xMm, y1Mm: from.yMm, x2Mm: to.xMm, y2Mm: to.yMm } };
}
