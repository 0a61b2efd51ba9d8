import { mmPerInch } from '../../core/units/mmPerInch.js';
import type { LengthUnits } from './lengthUnits.js';

/**
 * How far away someone stands: `24 in` and `6 1/2 ft`, or `60 cm` and `2 m`.
 * Rounded as one would pace it, not as one would measure wood.
 * @param mm distance, mm
 */
export function viewingDistanceText(mm: number, { units }: LengthUnits): string {
  if (units === 'mm') {
    if (mm < 975) return `${Math.max(10, Math.round(mm / 50) * 5)} cm`;
    return `${mm < 5000 ? Math.round(mm / 500) / 2 : Math.round(mm / 1000)} m`;
  }
  const inches = mm / mmPerInch;
  if (inches < 36) return `${Math.max(4, Math.round(inches))} in`;
  const halfFeet = Math.round(inches / 6);
  const whole = Math.floor(halfFeet / 2);
  return halfFeet % 2 === 1 && whole < 10 ? `${whole} 1/2 ft` : `${Math.round(inches / 12)} ft`;
}
