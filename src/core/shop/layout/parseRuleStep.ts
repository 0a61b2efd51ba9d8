import { SeamgrainError } from '../../errors.js';
import type { RuleStep } from '../../results/layoutResult.js';
import { normaliseLengthText } from '../../units/normaliseLengthText.js';
import { parseLengthMm } from '../../units/parseLengthMm.js';

/**
 * Reads the finest mark of the maker's rule: `1/16in`, `1/32in`, `1/64in`, `0.001in`, `0.5mm`;
 * a plain `32` is that many marks to the inch.
 * @throws SeamgrainError `badLength` for anything that is not such a step
 */
export function parseRuleStep(text: string): RuleStep {
  const marks = /^(?:2|4|8|16|32|64|128)$/.exec(text.trim());
  if (marks) return { style: 'fraction', denominator: Number(marks[0]) };
  const stepMm = parseLengthMm(text);
  const plain = normaliseLengthText(text);
  const fraction = /^1\/(2|4|8|16|32|64|128) ?(?:in|inch|")$/.exec(plain);
  if (fraction) return { style: 'fraction', denominator: Number(fraction[1]) };
  const decimal = /^0?\.(0*1) ?(?:in|inch|")$/.exec(plain);
  if (decimal) return { style: 'decimal', places: decimal[1]!.length };
  if (/m$/.test(plain) && stepMm > 0) return { style: 'metric', stepMm };
  throw new SeamgrainError(
    'badLength',
    `'${text}' is not a step of a rule`,
    'write 1/16in, 1/32in, 1/64in, 0.001in or 0.5mm',
  );
}
