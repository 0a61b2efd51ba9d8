import type { RuleStep } from '../../core/results/layoutResult.js';
import { ruleText } from './ruleText.js';

/** A size in the maker's way of writing, fine enough for a dressing: 1/64 in, 0.001 in or 0.1 mm. */
export function sizeText(mm: number, rule: RuleStep): string {
  if (rule.style === 'decimal') return ruleText(mm, rule);
  return ruleText(
    mm,
    rule.style === 'metric'
      ? { style: 'metric', stepMm: Math.min(rule.stepMm, 0.1) }
      : { style: 'fraction', denominator: Math.max(rule.denominator, 64) },
  );
}
