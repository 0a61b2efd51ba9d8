import type { LengthUnits } from '../../report/words/lengthUnits.js';

/** The units options as the report takes them. */
export function lengthUnitsOf(options: {
  units: 'in' | 'mm';
  rule: '16' | '32' | '64';
}): LengthUnits {
  return { units: options.units, denominator: Number(options.rule) };
}
