import { SeamgrainError } from '../../errors.js';
import type { RuleStep } from '../../results/layoutResult.js';
import { exactMm } from '../../units/exactMm.js';
import type { ExactLayout } from './exactLayout.js';
import { type RuleSetting, ruleSetting } from './ruleSetting.js';
import { type SimulatedWork, simulateSequence } from './simulateSequence.js';
import type { SawStep, WorkStep } from './workSteps.js';

/** The sequence as the maker can set it, and what that yields. */
export interface WorkOnRule {
  /** By index of the step; null for a dressing. */
  readonly settings: readonly (RuleSetting | null)[];
  /** The virtual run with those settings; null when the rule is too coarse for the pieces. */
  readonly run: SimulatedWork | null;
}

/**
 * Rounds every fence setting to the maker's rule so that the kept piece gains and never loses,
 * then runs the rounded sequence on the virtual blank.
 * Near side of the blade: up. Far side: down. The piece beyond the kerf pays, and its measured
 * size says so.
 */
export function settingsOnRule(
  layout: ExactLayout,
  steps: readonly WorkStep[],
  rule: RuleStep,
): WorkOnRule {
  const settings = steps.map((step) =>
    step.kind === 'dress'
      ? null
      : ruleSetting(step.fence.valueOf(), rule, step.toBlade === 'near' ? 'up' : 'down'),
  );
  const rounded = steps.map((step, index): WorkStep => {
    const setting = settings[index];
    return setting ? { ...(step as SawStep), fence: exactMm(setting.mm) } : step;
  });
  try {
    return { settings, run: simulateSequence(layout, layout.kerf, rounded, 'ignored') };
  } catch (error) {
    if (error instanceof SeamgrainError) return { settings, run: null };
    throw error;
  }
}
