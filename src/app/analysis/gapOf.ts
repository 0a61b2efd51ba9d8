import { SeamgrainError } from '../../core/errors.js';
import type { GapResult } from '../../core/results/gapResult.js';
import { computeGap } from '../../core/shop/movement/computeGap.js';
import type { GapQuestion, Settings } from '../state/project.js';
import { gapInputOf } from './gapInputOf.js';

/** The gap to leave, or why it cannot be told. */
export function gapOf(
  gap: GapQuestion,
  settings: Settings,
): { readonly gap: GapResult | null; readonly problem: string } {
  try {
    const answer = computeGap({
      ...gapInputOf(gap, settings),
      rings: { kind: 'class', cut: gap.ringAngle },
    });
    return { gap: answer, problem: '' };
  } catch (thrown) {
    if (!(thrown instanceof SeamgrainError)) throw thrown;
    return { gap: null, problem: thrown.message };
  }
}
