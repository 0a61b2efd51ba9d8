import { SeamgrainError } from '../../core/errors.js';
import type { GapResult } from '../../core/results/gapResult.js';
import { computeGap } from '../../core/shop/movement/computeGap.js';
import { parseClimate } from '../../core/units/parseClimate.js';
import type { GapQuestion, Settings } from '../state/project.js';

/** The gap to leave, or why it cannot be told. */
export function gapOf(
  gap: GapQuestion,
  settings: Settings,
): { readonly gap: GapResult | null; readonly problem: string } {
  try {
    const answer = computeGap({
      species: gap.species,
      acrossMm: settings.frontHeightMm,
      lengthMm: settings.frontWidthMm,
      distanceMm: settings.distanceMm,
      rings: { kind: 'class', cut: gap.ringAngle },
      from: { kind: 'climate', climate: parseClimate(gap.shop) },
      to: { kind: 'climate', climate: parseClimate(gap.home) },
      surround: { kind: gap.surround },
      revealMm: gap.revealMm,
      place: gap.place,
      isVeneered: settings.frontWood === 'veneered',
    });
    return { gap: answer, problem: '' };
  } catch (thrown) {
    if (!(thrown instanceof SeamgrainError)) throw thrown;
    return { gap: null, problem: thrown.message };
  }
}
