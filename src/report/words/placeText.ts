import { formatInches } from '../../core/units/formatInches.js';
import { formatMm } from '../../core/units/formatMm.js';
import type { LengthUnits } from './lengthUnits.js';

/**
 * A place or a size on the panel as read off the maker's rule: `14 3/8 in`, `365 mm`.
 * @param mm length, mm
 */
export function placeText(mm: number, { units, denominator = 16 }: LengthUnits): string {
  return units === 'in' ? formatInches(mm, denominator) : formatMm(mm, 0);
}
