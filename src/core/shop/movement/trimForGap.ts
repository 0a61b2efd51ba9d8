import type { GapResult } from '../../results/gapResult.js';
import type { LayoutResult } from '../../results/layoutResult.js';
import { lengthWords } from '../../units/lengthWords.js';

/**
 * Says where the trim that a layout allows is less than the gap that the front wants.
 * @returns one sentence, or none
 */
export function trimForGap(layout: LayoutResult, gap: GapResult): string[] {
  const allowedMm = 2 * layout.trimMm;
  const { fittedMm } = gap.seasons;
  if (layout.frontWood !== 'same' || fittedMm <= allowedMm + 1e-6) return [];
  return [
    `The layout allows ${lengthWords(allowedMm)} of trim across the grain in all, the gap wants ${lengthWords(fittedMm)}: cut the strip wider (trim ${lengthWords(fittedMm / 2)} an edge), or the front comes out that much smaller.`,
  ];
}
