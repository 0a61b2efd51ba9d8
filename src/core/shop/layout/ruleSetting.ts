import type { RuleStep } from '../../results/layoutResult.js';
import { formatInches } from '../../units/formatInches.js';
import { formatMm } from '../../units/formatMm.js';
import { inchFraction } from '../../units/inchFraction.js';
import { mmPerInch } from '../../units/mmPerInch.js';

/** A length as it can be set on the maker's rule, and what that costs. */
export interface RuleSetting {
  /** `14 3/8 in`, `14.375 in` or `365.5 mm`. */
  readonly text: string;
  readonly mm: number;
  /** Setting minus exact length. */
  readonly errorMm: number;
}

/**
 * Rounds a length to a mark of the maker's rule.
 * @param mm exact length, mm
 * @param rule the rule's finest mark
 * @param direction `"up"` and `"down"` push the error to the side that can bear it
 */
export function ruleSetting(
  mm: number,
  rule: RuleStep,
  direction: 'nearest' | 'down' | 'up',
): RuleSetting {
  if (rule.style === 'metric') {
    const steps = roundSteps(mm / rule.stepMm, direction);
    const setMm = Number((steps * rule.stepMm).toFixed(9));
    return { text: formatMm(setMm, 3), mm: setMm, errorMm: setMm - mm };
  }
  const perInch = rule.style === 'fraction' ? rule.denominator : 10 ** rule.places;
  const { mm: setMm, errorMm } = inchFraction(mm, perInch, direction);
  const text =
    rule.style === 'fraction'
      ? formatInches(setMm, perInch)
      : `${(setMm / mmPerInch).toFixed(rule.places)} in`;
  return { text, mm: setMm, errorMm };
}

function roundSteps(steps: number, direction: 'nearest' | 'down' | 'up'): number {
  const nearest = Math.round(steps);
  if (direction === 'nearest' || Math.abs(steps - nearest) < 1e-7) return nearest;
  return direction === 'down' ? Math.floor(steps) : Math.ceil(steps);
}
