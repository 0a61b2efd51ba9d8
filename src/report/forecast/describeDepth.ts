import type { ForecastDepth } from '../../core/results/forecastResult.js';
import { mmPerInch } from '../../core/units/mmPerInch.js';
import type { LengthUnits } from '../words/lengthUnits.js';

/** Thousandths of an inch, or hundredths of a millimetre: what a plane takes is finer than a rule. */
function planedText(mm: number, { units }: LengthUnits): string {
  return units === 'in' ? `${(mm / mmPerInch).toFixed(3)} in` : `${mm.toFixed(2)} mm`;
}

/** Less than this cannot be kept by hand, mm. */
const leastKeptMm = 0.02;

/** How careful to be with the plane after the cut. */
export function describeDepth(depth: ForecastDepth, units: LengthUnits): string {
  const { ringAngleDeg, ringAngleFrom, shiftPerMm, largestMm, notes } = depth;
  if (ringAngleDeg === null || shiftPerMm === null) return notes.join(' ');
  const isEstimate = ringAngleFrom === 'face';
  const basis = isEstimate ? ` ${notes.at(-1)}` : '';
  const angle = angleText(depth);
  if (largestMm === null) {
    return `With ${angle}, planing front and panel apart does not matter here.${basis}`;
  }
  const moves = `With ${angle} a grain line moves ${shiftPerMm.toFixed(1)} times as far as is planed off.`;
  if (largestMm < leastKeptMm) {
    return `${moves} Plane front and panel as one: any difference will show.${basis}`;
  }
  return `${moves} Plane the front by no more than ${planedText(largestMm, units)} more or less than the panel${rangeText(depth, units)}, or the lines part visibly.${basis}`;
}

function angleText({ ringAngleDeg, ringAngleSeDeg, ringAngleFrom }: ForecastDepth): string {
  const degrees = `${Math.round(ringAngleDeg ?? 0)} degrees`;
  if (ringAngleFrom !== 'face') return `rings at ${degrees} to the face`;
  return `rings at about ${degrees} to the face where they lie flattest (give or take ${Math.round(ringAngleSeDeg ?? 0)})`;
}

/** How far the estimate leaves the allowance open. */
function rangeText({ largestRangeMm }: ForecastDepth, units: LengthUnits): string {
  if (!largestRangeMm) return '';
  const [least, most] = largestRangeMm;
  if (least === null) return '';
  const low = least < leastKeptMm ? 'nothing' : planedText(least, units);
  const high = most === null ? 'any amount' : planedText(most, units);
  return ` (the face tells no closer than ${low} to ${high})`;
}
