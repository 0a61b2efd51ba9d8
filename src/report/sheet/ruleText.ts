import type { RuleStep } from '../../core/results/layoutResult.js';
import { ruleSetting } from '../../core/shop/layout/ruleSetting.js';

/** A length as the maker's rule shows it, to its nearest mark. */
export function ruleText(mm: number, rule: RuleStep): string {
  return ruleSetting(mm, rule, 'nearest').text;
}
