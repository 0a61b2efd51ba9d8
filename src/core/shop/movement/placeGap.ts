import type { GapResult } from '../../results/gapResult.js';

const reasons = {
  top: 'A drawer front rests on its lower edge, so all of its swelling goes up (common practice).',
  bottom: 'A front held at its upper edge swells down (common practice).',
  split: 'A front held at its middle swells both ways (common practice).',
} as const;

/** Shares the fitted gap between top and bottom; the reveal stays on both sides when split. */
export function placeGap(fittedMm: number, at: 'top' | 'bottom' | 'split'): GapResult['place'] {
  const topMm = at === 'top' ? fittedMm : at === 'split' ? fittedMm / 2 : 0;
  return { at, topMm, bottomMm: fittedMm - topMm, why: reasons[at] };
}
