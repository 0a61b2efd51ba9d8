import type { ForecastDepth } from '../../core/results/forecastResult.js';
import { mmPerInch } from '../../core/units/mmPerInch.js';
import type { LengthUnits } from '../words/lengthUnits.js';

/** Thousandths of an inch, or hundredths of a millimetre: what a plane takes is finer than a rule. */
function planedText(mm: number, { units }: LengthUnits): string {
  return units === 'in' ? `${(mm / mmPerInch).toFixed(3)} in` : `${mm.toFixed(2)} mm`;
}

/** How careful to be with the plane after the cut. */
export function describeDepth(depth: ForecastDepth, units: LengthUnits): string {
  const { ringAngleDeg, shiftPerMm, largestMm, notes } = depth;
  if (ringAngleDeg === null || shiftPerMm === null) return notes.join(' ');
  const angle = `rings at ${Math.round(ringAngleDeg)} degrees to the face`;
  if (largestMm === null)
    return `With ${angle}, planing front and panel apart does not matter here.`;
  const moves = `With ${angle} a grain line moves ${shiftPerMm.toFixed(1)} times as far as is planed off.`;
  if (largestMm < 0.02) return `${moves} Plane front and panel as one: any difference will show.`;
  return `${moves} Plane the front by no more than ${planedText(largestMm, units)} more or less than the panel, or the lines part visibly.`;
}
