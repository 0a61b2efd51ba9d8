import { SeamgrainError } from '../../core/errors.js';
import type { AsCutResult } from '../../core/results/asCutResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import { computeAsCut } from '../../core/shop/layout/computeAsCut.js';
import type { MeasuredSize } from '../state/project.js';

/** What still comes out of the pieces as measured, or why that cannot be told. */
export function asCutOf(
  layout: LayoutResult,
  measures: readonly MeasuredSize[],
): { readonly asCut: AsCutResult | null; readonly problem: string } {
  const names = new Set(layout.pieces.flatMap(({ name, strip }) => [name, strip]));
  const there = measures
    .filter(({ piece }) => names.has(piece))
    .map(({ piece, widthMm, lengthMm }) => ({
      piece,
      ...(widthMm === null ? {} : { widthMm }),
      ...(lengthMm === null ? {} : { lengthMm }),
    }));
  try {
    return { asCut: computeAsCut(layout, there), problem: '' };
  } catch (thrown) {
    if (!(thrown instanceof SeamgrainError)) throw thrown;
    return { asCut: null, problem: thrown.message };
  }
}
